// Every band of rounding.csv against the engine: at its lower end, inside and just below its upper end.
#include "core/figure/daily_values.h"
#include "core/figure/rounding.h"
#include "core/figure/rounding_table.h"
#include "tests/reference/cells.h"
#include "tests/reference/table_run.h"
#include "tests/support/reference_table.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <stdexcept>
#include <string>
#include <vector>

namespace test {
namespace {

using core::Content;
using core::Count;
using core::Figure;
using core::Mass;
using core::Percent;
using core::Volume;

/// A band in the billionths that core counts in.
struct TableBand {
    std::int64_t from;
    std::int64_t below;
    std::int64_t step; ///< 0: the row has none
    std::string rule;
};

TableBand band_of(const ReferenceRow& row)
{
    constexpr std::int64_t steps_where_open = 40;
    const std::string unit = row["unit"] == "%" || row["unit"] == "servings" || row["unit"] == "mL" ? "g" : row["unit"];
    const auto nano = [&](const std::string& cell) { return content_of_cell(cell, unit).nano(); };
    TableBand band{nano(row["from"]), 0, row["step"].empty() ? 0 : nano(row["step"]), row["rule"]};
    band.below = row["below"].empty() ? band.from + steps_where_open * band.step : nano(row["below"]);
    return band;
}

/// Values of a band: both ends, and a hundred in between (which meet the half steps).
std::vector<std::int64_t> values_in(const TableBand& band)
{
    constexpr std::int64_t parts = 100;
    std::vector<std::int64_t> values;
    for (std::int64_t i = 0; i < parts; ++i)
        values.push_back(band.from + (band.below - band.from) * i / parts);
    values.push_back(band.below - 1);
    return values;
}

/// The nearest multiple of `step`, halves up, by counting whole steps.
std::int64_t nearest(std::int64_t value, std::int64_t step)
{
    const std::int64_t whole = value / step * step;
    return 2 * (value - whole) >= step ? whole + step : whole;
}

/// What the row says is printed for a value of its band.
Figure said(const TableBand& band, std::int64_t value)
{
    if (band.rule == "zero")
        return {};
    if (band.rule == "less_than")
        return {Content::from_nano(band.step), true, 0};
    if (band.rule == "step")
        return {Content::from_nano(nearest(value, band.step)), false, 0};
    if (band.rule == "express")
        return {Content::from_nano(band.step), false, 0};
    throw std::runtime_error("unknown rule " + band.rule);
}

void check_nutrient(const RuleOf& rule, const TableBand& band)
{
    for (const auto value : values_in(band)) {
        CAPTURE(value);
        const auto printed = core::printed_figure(rule.nutrient, Content::from_nano(value), rule.panel);
        const auto expected = said(band, value);
        CHECK(printed.amount == expected.amount);
        CHECK(printed.less_than == expected.less_than);
        const auto behind = core::range_behind(rule.nutrient, expected, rule.panel);
        REQUIRE(behind);
        CHECK(behind->holds(Content::from_nano(value)));
    }
}

void check_percent(core::PercentRounding rounding, const TableBand& band)
{
    for (const auto value : values_in(band)) {
        CAPTURE(value);
        const std::int64_t expected = said(band, value).amount.nano();
        CHECK(Percent::whole(core::printed_percent(rounding, Percent::from_nano(value))).nano() == expected);
    }
}

/// Checks an engine that turns one amount into another, such as printed_servings.
template<class Quantity, class Print>
void check_print(const TableBand& band, Print print)
{
    for (const auto value : values_in(band)) {
        CAPTURE(value);
        CHECK(print(Quantity::from_nano(value)).nano() == said(band, value).amount.nano());
    }
}

/// A vitamin's place: every amount, rounded to it, is a figure whose range holds the amount.
void check_place(core::Nutrient nutrient, std::int64_t place, bool guidance)
{
    const auto* held = core::vitamin_place(nutrient);
    REQUIRE(held != nullptr);
    CHECK((guidance ? held->guidance_step : held->code_step) == place);
    const auto rdi = core::daily_value(nutrient, core::Panel::Of2016, core::Audience::Adult);
    REQUIRE(rdi);
    for (int i = 0; i <= 300; ++i) {
        const auto amount = Content::from_nano(rdi->nano() * i / 200);
        CAPTURE(i);
        const Figure figure{Content::from_nano(nearest(amount.nano(), place)), false, 0};
        const auto behind = core::range_behind(nutrient, figure);
        REQUIRE(behind);
        CHECK(behind->holds(amount));
    }
}

/// Whether core holds what a row is about.
bool held(const std::string& name)
{
    return percent_rule_of(name) || name == "servings_per_container" || name == "serving_size_metric_g" ||
           name == "serving_size_metric_ml" || rule_of(name);
}

/// Why core holds no such line; empty for what it should hold.
std::string not_held(const std::string& name)
{
    if (name.starts_with("calories_from_"))
        return "calories from fat are read from no label";
    return name == "other_carbohydrate_pre2016" ? "other carbohydrate is read from no label" : "";
}

} // namespace

TEST_CASE("rounding.csv: each band prints as the engine prints")
{
    TableRun run("rounding.csv");
    const auto rows = reference_rows("rounding.csv");
    for (const auto& row : rows) {
        CAPTURE(row.place());
        std::string name = row["nutrient"];
        CAPTURE(name);
        CAPTURE(row["text"]);
        const bool guidance = name.ends_with("_guidance");
        if (guidance)
            name.resize(name.size() - std::string("_guidance").size());
        if (!held(name)) {
            run.skipped(not_held(name));
            continue;
        }
        run.used();
        if (const auto percent = percent_rule_of(name)) {
            check_percent(*percent, band_of(row));
        } else if (name == "servings_per_container") {
            check_print<Count>(band_of(row), core::printed_servings);
        } else if (name == "serving_size_metric_g") {
            check_print<Mass>(band_of(row), [](Mass size) { return core::printed_serving_size(size); });
        } else if (name == "serving_size_metric_ml") {
            check_print<Volume>(band_of(row), [](Volume size) { return core::printed_serving_size(size); });
        } else if (const auto rule = rule_of(name); row["rule"] == "express") {
            check_place(rule->nutrient, content_of_cell(row["step"], row["unit"]).nano(), guidance);
        } else {
            check_nutrient(*rule, band_of(row));
        }
    }
    run.done(rows.size());
}

TEST_CASE("rounding.csv: every nutrient that core prints has its rows in the table")
{
    std::set<core::Nutrient> in_table;
    for (const auto& row : reference_rows("rounding.csv")) {
        const std::string& name = row["nutrient"];
        if (const auto nutrient = core::nutrient_by_key(name))
            in_table.insert(*nutrient);
    }
    for (const auto& known : core::nutrients()) {
        CAPTURE(std::string(known.key));
        CHECK(in_table.contains(known.nutrient));
    }
}

} // namespace test
