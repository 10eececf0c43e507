// Every row of program_rules.csv on cereal and yogurt of WIC and CACFP against the rules, with its days; and the plain
// conversions against the portions that the rules are counted in.
#include "core/figure/daily_values.h"
#include "core/figure/wide.h"
#include "core/rules/programs.h"
#include "tests/reference/cells.h"
#include "tests/reference/table_run.h"
#include "tests/support/reference_table.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <optional>
#include <string>

namespace test {
namespace {

using core::Day;
using core::Limit;
using core::Mass;
using core::Rule;

constexpr std::int64_t one = 1'000'000'000;

std::string why_skipped(const ReferenceRow& row)
{
    const auto& programme = row["programme"];
    const bool cereal_or_yogurt = row["food"] == "breakfast cereal" || row["food"] == "yogurt";
    if (programme == "FDA healthy")
        return "FDA healthy counts food groups: no label tells";
    if (programme == "Smart Snacks")
        return "snacks sold at school are not shown";
    if (programme.starts_with("NSLP") || programme.starts_with("SBP"))
        return "school meals are not shown";
    if (programme == "WIC" && !cereal_or_yogurt)
        return "WIC foods that are not shown";
    if (row["limit"].starts_with("share of a State list"))
        return "about a State's list, not about a food";
    if (programme == "conversion" && row["food"].find("fl oz") != std::string::npos)
        return "drinks are not shown";
    return "";
}

/// "2025-10-01".
std::optional<Day> day_of(const std::string& cell)
{
    if (cell.empty())
        return std::nullopt;
    return Day{std::stoi(cell.substr(0, 4)), std::stoi(cell.substr(5, 2)), std::stoi(cell.substr(8, 2))};
}

/// The rule's portion by the row's words; both ways of counting an ounce.
core::Portion portion_of(const std::string& per)
{
    const auto ounces = [](std::int64_t count) {
        return core::Portion{Mass::whole(28 * count), Mass::from_nano(28'349'523'125 * count)};
    };
    const std::map<std::string, core::Portion> portions{
        {"100 g dry", {Mass::whole(100), Mass::whole(100)}},
        {"1 dry oz", ounces(1)},
        {"6 oz", ounces(6)},
        {"8 oz", ounces(8)},
        {"1 cup", {Mass::whole(245), Mass::whole(245)}}, // FoodData Central: a cup of yogurt
    };
    return portions.at(per);
}

Limit limit_of(const ReferenceRow& row)
{
    static const std::map<std::string, core::Nutrient> nutrients{{"iron", core::Nutrient::Iron},
                                                                 {"total sugars", core::Nutrient::TotalSugars},
                                                                 {"added sugars", core::Nutrient::AddedSugars},
                                                                 {"vitamin D", core::Nutrient::VitaminD}};
    Limit limit{nutrients.at(row["limit"]),
                row["comparison"] == "at_least" ? core::Bound::AtLeast : core::Bound::AtMost,
                row["unit"] == "IU" ? nano_of_cell(row["value"]) / 40 / 1'000'000 // 40 IU a microgram
                                    : content_of_cell(row["value"], row["unit"]).nano(),
                core::Counted::Amount,
                core::Per::Portion,
                false,
                portion_of(row["per"])};
    limit.confirmed = row["checked"] == "verified";
    return limit;
}

const Rule* rule_of_row(const ReferenceRow& row)
{
    const auto food = row["food"] == "yogurt" ? core::RuleFood::Yogurt : core::RuleFood::DryCereal;
    const bool wic = row["programme"] == "WIC";
    for (const auto& rule : core::program_rules()) {
        const bool same_program = rule.key.starts_with("wic") == wic;
        if (same_program && rule.food == food && rule.limits.size() == 1 && rule.limits[0] == limit_of(row))
            return &rule;
    }
    return nullptr;
}

/// "12 g" in "12 g per 6 oz"; the number, and how many of its smallest unit.
std::int64_t number_before(const std::string& text)
{
    return nano_of_cell(text.substr(0, text.find(' ')));
}

std::int64_t grams_of(const std::string& amount)
{
    static const std::map<std::string, std::int64_t> named{
        {"dry oz", 28'349'523'125},   {"1 oz", 28'349'523'125},     {"dry oz of 28 g", 28 * one},
        {"6 oz", 6 * 28'349'523'125}, {"8 oz", 8 * 28'349'523'125}, {"1 cup yogurt", 245 * one},
    };
    const auto found = named.find(amount);
    return found != named.end() ? found->second : number_before(amount);
}

/// The row's value to the places that it prints, from what it says it was worked out from.
void check_conversion(const ReferenceRow& row)
{
    const std::string per = " per ";
    const auto& from = row["food"];
    const auto at = from.find(per);
    REQUIRE(at != std::string::npos);
    core::Wide value = core::Wide{number_before(from)} * grams_of(row["per"]) / grams_of(from.substr(at + per.size()));
    if (row["unit"] == "percent DV") {
        const auto daily = core::daily_value(core::Nutrient::Iron, core::Panel::Of2016, core::Audience::Adult);
        REQUIRE(daily);
        value = value * 100 * 1'000'000 / daily->nano(); // milligrams of a Daily Value in grams
    }
    const auto printed = row["value"];
    const auto point = printed.find('.');
    std::int64_t place = one;
    for (std::size_t i = 0; point != std::string::npos && i + point + 1 < printed.size(); ++i)
        place /= 10;
    const auto difference = static_cast<std::int64_t>(value) - nano_of_cell(printed);
    CHECK((difference < 0 ? -difference : difference) <= place / 2 + 1);
}

void check_rule(const ReferenceRow& row, TableRun& run)
{
    const Rule* rule = rule_of_row(row);
    REQUIRE(rule);
    CHECK(row["source"].starts_with(rule->citation.substr(0, 12)));
    CHECK(rule->to == day_of(row["effective_to"]));
    // "end date from memory" stands in the row's note; the yogurt row ends by the same rule on the same day.
    CHECK(rule->end_confirmed == !(row["programme"] == "WIC" && !row["effective_to"].empty()));
    if (row["effective_from"] == "2014-03-04") {
        CHECK(rule->from == Day{2014, 5, 5});
        run.settled(); // 79 FR 12274 (4 March 2014), dates: effective 5 May 2014 (table wrong: day of publication)
        return;
    }
    CHECK(rule->from == day_of(row["effective_from"]));
    run.used();
}

} // namespace

TEST_CASE("program_rules.csv: every row on cereal and yogurt stands in the rules, every conversion comes out")
{
    TableRun run("program_rules.csv");
    for (const auto& row : reference_rows("program_rules.csv")) {
        CAPTURE(row.place());
        CAPTURE(row["food"]);
        CAPTURE(row["limit"]);
        if (const auto why = why_skipped(row); !why.empty()) {
            run.skipped(why);
        } else if (row["programme"] == "conversion") {
            check_conversion(row);
            run.used();
        } else {
            check_rule(row, run);
        }
    }
    run.done(140);
}

TEST_CASE("program_rules.csv: the rules hold nothing that is not in the table")
{
    const auto rows = reference_rows("program_rules.csv");
    for (const auto& rule : core::program_rules()) {
        CAPTURE(std::string(rule.key));
        CHECK(std::ranges::any_of(rows, [&](const ReferenceRow& row) {
            const bool program = row["programme"] == "WIC" || row["programme"] == "CACFP";
            return program && why_skipped(row).empty() && rule_of_row(row) == &rule;
        }));
    }
}

} // namespace test
