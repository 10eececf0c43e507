// Every figure of the published sample labels: each has a range behind it, and each percent follows from its amount.
#include "core/figure/percent.h"
#include "core/figure/rounding.h"
#include "core/label/serving.h"
#include "tests/reference/cells.h"
#include "tests/support/reference_table.h"

#include <doctest/doctest.h>

#include <string>
#include <variant>

namespace test {
namespace {

using core::Content;
using core::Panel;

/// Source: 21 CFR 101.9(d)(7)(ii): a percent is worked out from the printed or from the true amount.
void check_percent_follows(const RuleOf& rule, Content printed, const core::Range<Content>& behind, int percent)
{
    const auto of = [&](Content amount) {
        return core::percent_daily_value(rule.nutrient, amount, rule.panel, core::Audience::Adult);
    };
    REQUIRE(of(printed));
    const bool from_printed = of(printed) == percent;
    const bool from_true =
        of(behind.low) <= percent && percent <= of(Content::from_nano(behind.high.nano() - 1)); // it only rises
    CHECK((from_printed || from_true));
}

void check_nutrient(const ReferenceRow& row, const RuleOf& rule)
{
    if (!row["percent_dv"].empty()) {
        const auto percent = core::parse_percent(row["percent_dv"]);
        REQUIRE(percent);
        CHECK(core::range_behind(core::percent_rounding(rule.nutrient, rule.panel), *percent));
    }
    if (row["printed"].empty()) { // older labels print vitamins and minerals as percents alone
        REQUIRE(rule.panel == Panel::Older);
        REQUIRE_FALSE(row["percent_dv"].empty());
        return;
    }
    const auto figure = core::parse_figure(rule.nutrient, row["printed"]);
    REQUIRE(figure);
    CHECK(core::number_of(*figure, core::info(rule.nutrient).unit) == row["printed"]);
    const auto behind = core::range_behind(rule.nutrient, *figure, rule.panel);
    REQUIRE(behind);
    CHECK(behind->holds(figure->amount));
    if (!row["percent_dv"].empty())
        check_percent_follows(rule, figure->amount, *behind, std::stoi(row["percent_dv"]));
}

void check_servings(const ReferenceRow& row)
{
    const auto servings = core::parse_servings(row["printed"]);
    REQUIRE(servings);
    const bool about = row["printed"].starts_with("About");
    CHECK(servings->kind ==
          (about ? core::ServingsPerContainer::Kind::About : core::ServingsPerContainer::Kind::Number));
    const auto behind = core::range_behind_about(servings->count);
    REQUIRE(behind);
    CHECK(behind->holds(servings->count));
}

void check_serving_size(const ReferenceRow& row)
{
    const auto measure = core::parse_measure(row["printed"] + " " + row["unit"]);
    REQUIRE(measure);
    const auto grams = std::get<core::Mass>(*measure);
    CHECK(core::printed_serving_size(grams) == grams);
    CHECK(core::range_behind_serving_size(grams).holds(grams));
}

} // namespace

TEST_CASE("label_examples.csv: every printed figure has a range, every percent follows from its amount")
{
    int nutrients = 0;
    int servings = 0;
    int sizes = 0;
    int household = 0;
    int not_held = 0;
    for (const auto& row : reference_rows("label_examples.csv")) {
        CAPTURE(row.place());
        CAPTURE(row["example"]);
        const std::string& field = row["field"];
        CAPTURE(field);
        if (field == "servings_per_container") {
            ++servings;
            check_servings(row);
        } else if (field == "serving_size_metric") {
            ++sizes;
            check_serving_size(row);
        } else if (field == "serving_size_household") {
            ++household; // words: "2/3 cup"
            CHECK_FALSE(row["printed"].empty());
        } else if (const auto rule = rule_of(field)) {
            ++nutrients;
            check_nutrient(row, {rule->nutrient, panel_of(row["label"])});
        } else {
            ++not_held; // calories from fat, which no label has printed since 2016
        }
    }
    CHECK(nutrients == 162);
    CHECK(servings == 9);
    CHECK(sizes == 9);
    CHECK(household == 11);
    CHECK(not_held == 5);
    CHECK(nutrients + servings + sizes + household + not_held == 196);
}

} // namespace test
