// Every figure of the published sample labels: each has a range behind it, and each percent follows from its amount.
#include "core/figure/percent.h"
#include "core/figure/rounding.h"
#include "core/label/household.h"
#include "core/label/serving.h"
#include "core/label/sharpen.h"
#include "core/label/tell_panel.h"
#include "tests/reference/cells.h"
#include "tests/reference/table_run.h"
#include "tests/support/reference_table.h"

#include <doctest/doctest.h>

#include <map>
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

/// Every sample label as a whole, by its name.
std::map<std::string, core::Label> example_labels()
{
    std::map<std::string, core::Label> labels;
    for (const auto& row : reference_rows("label_examples.csv")) {
        auto& label = labels[row["example"]];
        label.panel = panel_of(row["label"]);
        const std::string& field = row["field"];
        if (field == "servings_per_container")
            label.servings = core::parse_servings(row["printed"]).value();
        else if (field == "serving_size_metric")
            label.serving.metric = core::parse_measure(row["printed"] + " " + row["unit"]).value();
        else if (field == "serving_size_household")
            label.serving.household = row["printed"];
        else if (const auto rule = rule_of(field)) {
            auto& line = label.per_serving.lines[rule->nutrient];
            if (!row["printed"].empty())
                line.amount = core::parse_figure(rule->nutrient, row["printed"]).value();
            if (!row["percent_dv"].empty())
                line.percent = core::parse_percent(row["percent_dv"]).value();
        }
    }
    return labels;
}

} // namespace

TEST_CASE("label_examples.csv: every printed figure has a range, every percent follows from its amount")
{
    TableRun run("label_examples.csv");
    const auto rows = reference_rows("label_examples.csv");
    for (const auto& row : rows) {
        CAPTURE(row.place());
        CAPTURE(row["example"]);
        const std::string& field = row["field"];
        CAPTURE(field);
        if (field.starts_with("calories_from_")) {
            run.skipped("calories from fat are read from no label");
            continue;
        }
        run.used();
        if (field == "servings_per_container") {
            check_servings(row);
        } else if (field == "serving_size_metric") {
            check_serving_size(row);
        } else if (field == "serving_size_household") {
            CHECK(core::parse_household(row["printed"]));
        } else {
            const auto rule = rule_of(field);
            REQUIRE(rule);
            check_nutrient(row, {rule->nutrient, panel_of(row["label"])});
        }
    }
    run.done(rows.size());
}

// The sample labels are right as a whole: no line of one contradicts another one.
TEST_CASE("label_examples.csv: no published label is inconsistent when it is read as a whole")
{
    const auto labels = example_labels();
    CHECK(labels.size() > 10);
    for (const auto& [example, label] : labels) {
        const auto& told_example = example;
        CAPTURE(told_example);
        const auto sharp = core::sharpen(label);
        for (const auto& known : core::nutrients()) {
            CAPTURE(std::string(known.key));
            CHECK_FALSE(sharp.serving.of(known.nutrient).contradiction);
        }
        CHECK_FALSE(sharp.inconsistent());
    }
}

TEST_CASE("label_examples.csv: the panel of every published label is told from what it prints")
{
    for (const auto& [example, label] : example_labels()) {
        const auto& told_example = example;
        CAPTURE(told_example);
        const auto told = core::tell_panel(label);
        if (example == "extension_simplified_linear") { // sodium 20 mg 1%, carbohydrate 5 g 2%: right by both panels
            CHECK(told.by == core::ToldPanel::By::Nothing);
            continue;
        }
        CHECK(told.panel == label.panel);
    }
}

} // namespace test
