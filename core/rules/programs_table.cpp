// The programs' limits, one a row, each with its citation and its first and last day.
//
// WIC, breakfast cereal and yogurt: 7 CFR 246.10(e)(12), Table 4. The rule of 2024 (89 FR 28488, effective 17 June
// 2024) counts added sugars instead of total sugars and gave States about two years; its figures here were not read in
// the rule and are marked, so they are never answered by a figure. The day on which the limits before it end hangs on
// the State and is from general knowledge.
// CACFP: 7 CFR 226.20(a)(4)(ii) and (a)(5)(iii)(B); since 1 October 2025 as amended by 89 FR 31962 (25 April 2024).
//
// An ounce: the rules say "dry ounce", "6 oz". Worksheets take 28 g, the exact ounce is 28.349523125 g. Both are held.
#include "core/rules/programs.h"

namespace core {
namespace {

using N = Nutrient;

constexpr std::int64_t g = 1'000'000'000;
constexpr std::int64_t mg = 1'000'000;

/// So many ounces, both ways.
constexpr Portion ounces(std::int64_t count)
{
    return {Mass::whole(28 * count), Mass::from_nano(28'349'523'125 * count)};
}

constexpr Portion hundred_grams{Mass::whole(100), Mass::whole(100)};

/// A cup of yogurt weighs 245 g (FoodData Central, yogurt, plain).
constexpr Portion cup_of_yogurt{Mass::whole(245), Mass::whole(245)};

constexpr Limit limit(N nutrient, Bound bound, std::int64_t value, Portion portion)
{
    return {nutrient, bound, value, Counted::Amount, Per::Portion, false, portion};
}

constexpr Limit unread(Limit of_a_rule)
{
    of_a_rule.confirmed = false;
    return of_a_rule;
}

constexpr Limit iron[] = {limit(N::Iron, Bound::AtLeast, 28 * mg, hundred_grams)};
constexpr Limit wic_cereal_total[] = {limit(N::TotalSugars, Bound::AtMost, 21'200 * mg, hundred_grams)};
constexpr Limit wic_cereal_added[] = {unread(limit(N::AddedSugars, Bound::AtMost, 21'200 * mg, hundred_grams))};
constexpr Limit wic_yogurt_total[] = {limit(N::TotalSugars, Bound::AtMost, 40 * g, cup_of_yogurt)};
constexpr Limit wic_yogurt_added[] = {unread(limit(N::AddedSugars, Bound::AtMost, 16 * g, ounces(8)))};
/// 106 IU, which is 2.65 mcg: 1 mcg is 40 IU (21 CFR 101.9(c)(8)(iv), note on vitamin D).
constexpr Limit wic_yogurt_vitamin_d[] = {unread(limit(N::VitaminD, Bound::AtLeast, 2'650, ounces(8)))};
constexpr Limit cacfp_cereal_total[] = {limit(N::TotalSugars, Bound::AtMost, 6 * g, ounces(1))};
constexpr Limit cacfp_cereal_added[] = {limit(N::AddedSugars, Bound::AtMost, 6 * g, ounces(1))};
constexpr Limit cacfp_yogurt_total[] = {limit(N::TotalSugars, Bound::AtMost, 23 * g, ounces(6))};
constexpr Limit cacfp_yogurt_added[] = {limit(N::AddedSugars, Bound::AtMost, 12 * g, ounces(6))};

constexpr std::string_view wic = "7 CFR 246.10(e)(12), Table 4";
constexpr std::string_view wic_2024 = "7 CFR 246.10(e)(12), Table 4, as amended by 89 FR 28488";
constexpr std::string_view cacfp_cereal = "7 CFR 226.20(a)(4)(ii)";
constexpr std::string_view cacfp_yogurt = "7 CFR 226.20(a)(5)(iii)(B)";

constexpr std::optional<Day> open{};
constexpr Day wic_rule_2024{2024, 6, 17};
constexpr Day wic_before_ends{2026, 4, 19};
/// 79 FR 12274 (4 March 2014), effective 5 May 2014, brought yogurt.
constexpr Day wic_yogurt_from{2014, 5, 5};
constexpr Day cacfp_from{2017, 10, 1};
constexpr Day cacfp_before_ends{2025, 9, 30};
constexpr Day cacfp_added_from{2025, 10, 1};

constexpr auto cereal = RuleFood::DryCereal;
constexpr auto yogurt = RuleFood::Yogurt;
constexpr auto nothing = Beyond::Nothing;
constexpr auto printed = JudgedBy::PrintedFigure;
constexpr std::optional<N> one{}; // no subject: one rule, one row

constexpr Rule rows[] = {
    {"wic_cereal_iron", one, RuleSet::Wic, wic, open, open, true, cereal, iron, nothing, printed},
    {"wic_cereal_added_sugars", one, RuleSet::Wic, wic_2024, wic_rule_2024, open, true, cereal, wic_cereal_added,
     nothing, printed},
    {"wic_yogurt_added_sugars", one, RuleSet::Wic, wic_2024, wic_rule_2024, open, true, yogurt, wic_yogurt_added,
     nothing, printed},
    {"wic_yogurt_vitamin_d", one, RuleSet::Wic, wic_2024, wic_rule_2024, open, true, yogurt, wic_yogurt_vitamin_d,
     nothing, printed},
    {"wic_cereal_total_sugars", one, RuleSet::WicBefore, wic, open, wic_before_ends, false, cereal, wic_cereal_total,
     nothing, printed},
    {"wic_yogurt_total_sugars", one, RuleSet::WicBefore, wic, wic_yogurt_from, wic_before_ends, false, yogurt,
     wic_yogurt_total, nothing, printed},
    {"cacfp_cereal_added_sugars", one, RuleSet::Cacfp, cacfp_cereal, cacfp_added_from, open, true, cereal,
     cacfp_cereal_added, nothing, printed},
    {"cacfp_yogurt_added_sugars", one, RuleSet::Cacfp, cacfp_yogurt, cacfp_added_from, open, true, yogurt,
     cacfp_yogurt_added, nothing, printed},
    {"cacfp_cereal_total_sugars", one, RuleSet::CacfpBefore, cacfp_cereal, cacfp_from, cacfp_before_ends, true, cereal,
     cacfp_cereal_total, nothing, printed},
    {"cacfp_yogurt_total_sugars", one, RuleSet::CacfpBefore, cacfp_yogurt, cacfp_from, cacfp_before_ends, true, yogurt,
     cacfp_yogurt_total, nothing, printed},
};

} // namespace

std::span<const Rule> program_rules()
{
    return rows;
}

} // namespace core
