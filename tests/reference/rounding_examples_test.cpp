// Every row of rounding_examples.csv, forwards (what prints) and backwards (what the print can stand for).
#include "core/figure/rounding.h"
#include "core/label/serving.h"
#include "tests/reference/cells.h"
#include "tests/reference/table_run.h"
#include "tests/support/reference_table.h"

#include <doctest/doctest.h>

#include <string>
#include <variant>
#include <vector>

namespace test {
namespace {

using core::Content;
using core::Count;
using core::Percent;

/// The lawful forms of a row: the first choice and, where there is one, the other.
std::vector<std::string> forms(const ReferenceRow& row)
{
    std::vector<std::string> all{row["printed"]};
    if (!row["also_allowed"].empty())
        all.push_back(row["also_allowed"]);
    return all;
}

void check_nutrient(const ReferenceRow& row, const RuleOf& rule)
{
    const auto amount = content_of_cell(row["true_amount"], row["unit"]);
    const auto first = core::printed_figure(rule.nutrient, amount, rule.panel);
    bool printed = false;
    for (const auto& form : forms(row)) {
        CAPTURE(form);
        const auto figure = core::parse_figure(rule.nutrient, form);
        REQUIRE(figure);
        printed = printed || *figure == first;
        const auto behind = core::range_behind(rule.nutrient, *figure, rule.panel);
        REQUIRE(behind);
        CHECK(behind->holds(amount));
    }
    CHECK(printed);
}

void check_percent(const ReferenceRow& row, core::PercentRounding rounding)
{
    const auto amount = Percent::from_nano(nano_of_cell(row["true_amount"]));
    bool printed = false;
    for (const auto& form : forms(row)) {
        CAPTURE(form);
        const auto percent = core::parse_percent(form);
        REQUIRE(percent);
        printed = printed || percent->percent == core::printed_percent(rounding, amount);
        const auto behind = core::range_behind(rounding, *percent);
        REQUIRE(behind);
        CHECK(behind->holds(amount));
    }
    CHECK(printed);
}

void check_servings(const ReferenceRow& row)
{
    const auto amount = Count::from_nano(nano_of_cell(row["true_amount"]));
    REQUIRE(row["also_allowed"].empty());
    const auto servings = core::parse_servings(row["printed"]);
    REQUIRE(servings);
    CHECK(core::printed_servings(amount) == servings->count);
    const bool about = servings->kind == core::ServingsPerContainer::Kind::About;
    CHECK(about == (servings->count != amount)); // "about" wherever it was rounded
    const auto behind = core::range_behind_about(servings->count);
    REQUIRE(behind);
    CHECK(behind->holds(amount));
}

template<class Metric>
void check_serving_size(const ReferenceRow& row)
{
    const auto amount = Metric::from_nano(nano_of_cell(row["true_amount"]));
    REQUIRE(row["also_allowed"].empty());
    const auto measure = core::parse_measure(row["printed"]);
    REQUIRE(measure);
    const auto printed = std::get<Metric>(*measure);
    CHECK(core::printed_serving_size(amount) == printed);
    CHECK(core::range_behind_serving_size(printed).holds(amount));
}

} // namespace

TEST_CASE("rounding_examples.csv: each amount prints as the table says, and the print's range holds it")
{
    TableRun run("rounding_examples.csv");
    const auto rows = reference_rows("rounding_examples.csv");
    for (const auto& row : rows) {
        run.used();
        const std::string& name = row["nutrient"];
        CAPTURE(row.place());
        CAPTURE(name);
        CAPTURE(row["true_amount"]);
        CAPTURE(row["checked"]);
        if (const auto percent = percent_rule_of(name)) {
            check_percent(row, *percent);
        } else if (name == "servings_per_container") {
            check_servings(row);
        } else if (name == "serving_size_metric_g") {
            check_serving_size<core::Mass>(row);
        } else if (name == "serving_size_metric_ml") {
            check_serving_size<core::Volume>(row);
        } else {
            const auto rule = rule_of(name);
            REQUIRE(rule);
            check_nutrient(row, *rule);
        }
    }
    run.done(rows.size());
}

} // namespace test
