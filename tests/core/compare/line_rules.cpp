#include "tests/core/compare/line_rules.h"

#include "core/figure/figure.h"
#include "tests/support/reference_table.h"

#include <array>
#include <map>
#include <stdexcept>
#include <string>

namespace test {
namespace {

using brute::Kind;
using core::Panel;
using N = core::Nutrient;

constexpr std::int64_t g = brute::one;
constexpr std::int64_t mg = g / 1'000;
constexpr std::int64_t mcg = mg / 1'000;

LineRule banded(Kind kind, std::optional<Kind> percent, std::int64_t grid, std::int64_t most)
{
    return {kind, {}, percent, grid, most};
}

/// RDI and place: 21 CFR 101.9(c)(8)(iv). Second place: FDA draft guidance of January 2017 (the tens are `memory`).
LineRule vitamin(std::int64_t rdi, std::int64_t code, std::int64_t guidance)
{
    return {std::nullopt, {rdi, code, guidance}, Kind::VitaminPercent, code / 4, rdi};
}

const std::map<N, LineRule>& rules()
{
    static const std::map<N, LineRule> all{
        {N::Calories, banded(Kind::Calories, std::nullopt, 5 * g / 4, 300 * g)},
        {N::TotalFat, banded(Kind::Fat, Kind::WholePercent, g / 8, 24 * g)},
        {N::SaturatedFat, banded(Kind::Fat, Kind::WholePercent, g / 8, 24 * g)},
        {N::TransFat, banded(Kind::Fat, std::nullopt, g / 8, 6 * g)},
        {N::PolyunsaturatedFat, banded(Kind::Fat, std::nullopt, g / 8, 24 * g)},
        {N::MonounsaturatedFat, banded(Kind::Fat, std::nullopt, g / 8, 24 * g)},
        {N::Cholesterol, banded(Kind::Cholesterol, Kind::WholePercent, mg / 2, 120 * mg)},
        {N::Sodium, banded(Kind::Sodium, Kind::WholePercent, 5 * mg / 4, 600 * mg)},
        {N::TotalCarbohydrate, banded(Kind::Carbohydrate, Kind::WholePercent, g / 4, 60 * g)},
        {N::DietaryFiber, banded(Kind::Carbohydrate, Kind::WholePercent, g / 4, 12 * g)},
        {N::SolubleFiber, banded(Kind::Carbohydrate, std::nullopt, g / 4, 6 * g)},
        {N::InsolubleFiber, banded(Kind::Carbohydrate, std::nullopt, g / 4, 6 * g)},
        {N::TotalSugars, banded(Kind::Carbohydrate, std::nullopt, g / 4, 40 * g)},
        {N::AddedSugars, banded(Kind::Carbohydrate, Kind::WholePercent, g / 4, 40 * g)},
        {N::SugarAlcohol, banded(Kind::Carbohydrate, std::nullopt, g / 4, 8 * g)},
        {N::Protein, banded(Kind::Carbohydrate, Kind::WholePercent, g / 4, 30 * g)},
        {N::VitaminD, vitamin(20 * mcg, mcg, mcg / 10)},
        {N::Calcium, vitamin(1'300 * mg, mg, 10 * mg)},
        {N::Iron, vitamin(18 * mg, mg, mg / 10)},
        {N::Potassium, vitamin(4'700 * mg, mg, 10 * mg)},
        {N::VitaminA, vitamin(900 * mcg, mcg, 10 * mcg)},
        {N::VitaminC, vitamin(90 * mg, mg, mg)},
        {N::Thiamin, vitamin(12 * mg / 10, mg / 10, mg / 10)},
        {N::VitaminB12, vitamin(24 * mcg / 10, mcg / 10, mcg / 10)},
        {N::Copper, vitamin(9 * mg / 10, mg / 10, mg / 10)},
        {N::Choline, vitamin(550 * mg, mg, 10 * mg)},
        {N::Fluoride, banded(Kind::Fluoride, std::nullopt, mg / 40, 4 * mg)},
    };
    return all;
}

/// Potassium before 27 July 2016: 21 CFR 101.9(c)(5) and (c)(9) as they stood.
const LineRule& older_potassium()
{
    static const LineRule rule = banded(Kind::Sodium, Kind::WholePercent, 5 * mg / 4, 600 * mg);
    return rule;
}

using Values = std::array<std::array<std::array<std::int64_t, 3>, 2>, core::nutrient_count>;

std::int64_t nano_of(const ReferenceRow& row)
{
    const std::string& unit = row["unit"];
    const std::int64_t of_unit = unit.starts_with("mcg") ? mcg : unit.starts_with("mg") ? mg : g;
    const auto decimal = core::parse_decimal(row["amount"]);
    if (!decimal || unit == "IU")
        return 0;
    return static_cast<std::int64_t>(brute::Wide{decimal->nano} * of_unit / brute::one);
}

Values read_values()
{
    Values values{};
    const std::map<std::string, std::size_t> groups{{"adult", 0}, {"children_1_3", 1}, {"infants", 2}};
    for (const auto& row : reference_rows("daily_values.csv")) {
        const auto group = groups.find(row["group"]);
        const auto nutrient = core::nutrient_by_key(row["nutrient"]);
        if (group != groups.end() && nutrient)
            values[static_cast<std::size_t>(*nutrient)][row["label"] == "2016" ? 0 : 1][group->second] = nano_of(row);
    }
    return values;
}

} // namespace

brute::Prints LineRule::amounts(std::int64_t amount, brute::Halves halves) const
{
    return kind ? brute::prints(*kind, {amount}, halves) : brute::prints(places, {amount}, halves);
}

const std::vector<N>& tested_nutrients()
{
    static const std::vector<N> all = [] {
        std::vector<N> keys;
        for (const auto& [nutrient, rule] : rules())
            keys.push_back(nutrient);
        return keys;
    }();
    return all;
}

const LineRule& line_rule(N nutrient, Panel panel)
{
    if (nutrient == N::Potassium && panel == Panel::Older)
        return older_potassium();
    return rules().at(nutrient);
}

bool is_vitamin(N nutrient, Panel panel)
{
    return !line_rule(nutrient, panel).kind;
}

std::int64_t daily_value_of(N nutrient, Panel panel, core::Audience audience)
{
    static const Values values = read_values();
    return values[static_cast<std::size_t>(nutrient)][panel == Panel::Of2016 ? 0 : 1]
                 [static_cast<std::size_t>(audience)];
}

std::int64_t hidden_daily_value(N nutrient, Panel panel, core::Audience audience)
{
    const std::int64_t value = daily_value_of(nutrient, panel, audience);
    if (value == 0 && panel == Panel::Older && is_vitamin(nutrient, panel))
        return line_rule(nutrient, panel).places.rdi * 7 / 5;
    return value;
}

std::int64_t left_out_below(N nutrient, Panel panel)
{
    const LineRule& rule = line_rule(nutrient, panel);
    if (rule.kind)
        return brute::may_be_left_out_below(*rule.kind);
    if (panel == Panel::Older) // two percent of what the Daily Value was then
        return hidden_daily_value(nutrient, panel, core::Audience::Adult) / 50;
    return rule.places.rdi / 50;
}

} // namespace test
