// Nutrient content claims, one a row, with the paragraph that sets each limit. Limits that were not read in the rule
// are marked; they are never answered by a figure. Claims against a reference food or about words on the package have
// rows too, so that the answer can say why the label alone does not tell.
#include "core/rules/claims.h"

#include <array>

namespace core {
namespace {

using N = Nutrient;
using B = Bound;
using C = Counted;
using F = RuleFood;
using S = RuleSet;

constexpr std::int64_t g = 1'000'000'000;
constexpr std::int64_t mg = 1'000'000;
constexpr std::int64_t kcal = 1'000'000'000;

constexpr Portion hundred_grams{Mass::whole(100), Mass::whole(100)};

/// Per reference amount.
constexpr Limit of_reference(N nutrient, B bound, std::int64_t value)
{
    return {nutrient, bound, value};
}

/// Per reference amount, and in 50 g where that is small.
constexpr Limit of_small_too(N nutrient, B bound, std::int64_t value)
{
    return {nutrient, bound, value, C::Amount, Per::ReferenceAmount, true};
}

/// Per labeled serving.
constexpr Limit of_serving(N nutrient, B bound, std::int64_t value)
{
    return {nutrient, bound, value, C::Amount, Per::Serving};
}

/// Per 100 g.
constexpr Limit of_hundred(N nutrient, B bound, std::int64_t value)
{
    return {nutrient, bound, value, C::Amount, Per::Portion, false, hundred_grams};
}

/// As a share of all calories.
constexpr Limit of_calories(N nutrient, B bound, std::int64_t percents)
{
    return {nutrient, bound, percents, C::PercentOfCalories};
}

/// From general knowledge.
constexpr Limit unread(Limit limit)
{
    limit.confirmed = false;
    return limit;
}

// Calories and sugars: 21 CFR 101.60.
constexpr Limit calorie_free[] = {of_reference(N::Calories, B::Below, 5 * kcal),
                                  of_serving(N::Calories, B::Below, 5 * kcal)};
constexpr Limit low_calorie[] = {of_small_too(N::Calories, B::AtMost, 40 * kcal)};
constexpr Limit low_calorie_meal[] = {of_hundred(N::Calories, B::AtMost, 120 * kcal)};
constexpr Limit sugar_free[] = {of_reference(N::TotalSugars, B::Below, g / 2),
                                of_serving(N::TotalSugars, B::Below, g / 2)};

// Sodium: 21 CFR 101.61.
constexpr Limit sodium_free[] = {of_reference(N::Sodium, B::Below, 5 * mg), of_serving(N::Sodium, B::Below, 5 * mg)};
constexpr Limit very_low_sodium[] = {of_small_too(N::Sodium, B::AtMost, 35 * mg)};
constexpr Limit very_low_sodium_meal[] = {of_hundred(N::Sodium, B::AtMost, 35 * mg)};
constexpr Limit low_sodium[] = {of_small_too(N::Sodium, B::AtMost, 140 * mg)};
constexpr Limit low_sodium_meal[] = {of_hundred(N::Sodium, B::AtMost, 140 * mg)};

// Fat, saturated fat, cholesterol: 21 CFR 101.62. That "free" holds per reference amount and per labeled serving for
// total fat and cholesterol, and for saturated and trans fat: FDA's rules as tabulated in Institute of Medicine,
// Front-of-Package Nutrition Rating Systems and Symbols: Phase I Report (2010), appendix B.
constexpr Limit fat_free[] = {of_reference(N::TotalFat, B::Below, g / 2), of_serving(N::TotalFat, B::Below, g / 2)};
constexpr Limit low_fat[] = {of_small_too(N::TotalFat, B::AtMost, 3 * g)};
constexpr Limit low_fat_meal[] = {of_hundred(N::TotalFat, B::AtMost, 3 * g), of_calories(N::TotalFat, B::AtMost, 30)};
constexpr Limit saturated_fat_free[] = {
    of_reference(N::SaturatedFat, B::Below, g / 2), of_reference(N::TransFat, B::Below, g / 2),
    of_serving(N::SaturatedFat, B::Below, g / 2), of_serving(N::TransFat, B::Below, g / 2)};
constexpr Limit low_saturated_fat[] = {of_reference(N::SaturatedFat, B::AtMost, 1 * g),
                                       of_calories(N::SaturatedFat, B::AtMost, 15)};
constexpr Limit low_saturated_fat_meal[] = {of_hundred(N::SaturatedFat, B::AtMost, 1 * g),
                                            of_calories(N::SaturatedFat, B::Below, 10)};
constexpr Limit cholesterol_free[] = {of_reference(N::Cholesterol, B::Below, 2 * mg),
                                      of_serving(N::Cholesterol, B::Below, 2 * mg),
                                      of_reference(N::SaturatedFat, B::AtMost, 2 * g)};
constexpr Limit low_cholesterol[] = {of_small_too(N::Cholesterol, B::AtMost, 20 * mg),
                                     of_reference(N::SaturatedFat, B::AtMost, 2 * g)};
constexpr Limit low_cholesterol_meal[] = {of_hundred(N::Cholesterol, B::AtMost, 20 * mg),
                                          of_hundred(N::SaturatedFat, B::AtMost, 2 * g)};
constexpr Limit reduced_cholesterol[] = {of_reference(N::SaturatedFat, B::AtMost, 2 * g)};
constexpr Limit lean[] = {
    of_reference(N::TotalFat, B::Below, 10 * g),       of_reference(N::SaturatedFat, B::AtMost, 9 * g / 2),
    of_reference(N::Cholesterol, B::Below, 95 * mg),   of_hundred(N::TotalFat, B::Below, 10 * g),
    of_hundred(N::SaturatedFat, B::AtMost, 9 * g / 2), of_hundred(N::Cholesterol, B::Below, 95 * mg)};
constexpr Limit lean_by_piece[] = {unread(of_reference(N::TotalFat, B::Below, 8 * g)),
                                   unread(of_reference(N::SaturatedFat, B::AtMost, 7 * g / 2)),
                                   unread(of_reference(N::Cholesterol, B::Below, 80 * mg))};
constexpr Limit lean_meal[] = {unread(of_hundred(N::TotalFat, B::Below, 10 * g)),
                               unread(of_hundred(N::SaturatedFat, B::AtMost, 9 * g / 2)),
                               unread(of_hundred(N::Cholesterol, B::Below, 95 * mg)),
                               unread(of_serving(N::TotalFat, B::Below, 10 * g)),
                               unread(of_serving(N::SaturatedFat, B::AtMost, 9 * g / 2)),
                               unread(of_serving(N::Cholesterol, B::Below, 95 * mg))};
constexpr Limit extra_lean[] = {
    of_reference(N::TotalFat, B::Below, 5 * g),      of_reference(N::SaturatedFat, B::Below, 2 * g),
    of_reference(N::Cholesterol, B::Below, 95 * mg), of_hundred(N::TotalFat, B::Below, 5 * g),
    of_hundred(N::SaturatedFat, B::Below, 2 * g),    of_hundred(N::Cholesterol, B::Below, 95 * mg)};
constexpr Limit extra_lean_meal[] = {
    unread(of_hundred(N::TotalFat, B::Below, 5 * g)),      unread(of_hundred(N::SaturatedFat, B::Below, 2 * g)),
    unread(of_hundred(N::Cholesterol, B::Below, 95 * mg)), unread(of_serving(N::TotalFat, B::Below, 5 * g)),
    unread(of_serving(N::SaturatedFat, B::Below, 2 * g)),  unread(of_serving(N::Cholesterol, B::Below, 95 * mg))};
constexpr Limit light_meal_fat[] = {of_hundred(N::TotalFat, B::AtMost, 3 * g)};
constexpr Limit light_meal_calories[] = {of_hundred(N::Calories, B::AtMost, 120 * kcal)};

// Levels up to which no other nutrient must be pointed to: 21 CFR 101.13(h). The rule says "more than": at most so
// much of every one means that nothing must be disclosed.
constexpr Limit disclosure[] = {
    of_small_too(N::TotalFat, B::AtMost, 13 * g),     of_serving(N::TotalFat, B::AtMost, 13 * g),
    of_small_too(N::SaturatedFat, B::AtMost, 4 * g),  of_serving(N::SaturatedFat, B::AtMost, 4 * g),
    of_small_too(N::Cholesterol, B::AtMost, 60 * mg), of_serving(N::Cholesterol, B::AtMost, 60 * mg),
    of_small_too(N::Sodium, B::AtMost, 480 * mg),     of_serving(N::Sodium, B::AtMost, 480 * mg)};
constexpr Limit disclosure_meal[] = {
    of_serving(N::TotalFat, B::AtMost, 26 * g), of_serving(N::SaturatedFat, B::AtMost, 8 * g),
    of_serving(N::Cholesterol, B::AtMost, 120 * mg), of_serving(N::Sodium, B::AtMost, 960 * mg)};
constexpr Limit disclosure_main_dish[] = {
    of_serving(N::TotalFat, B::AtMost, 39 * g / 2), of_serving(N::SaturatedFat, B::AtMost, 6 * g),
    of_serving(N::Cholesterol, B::AtMost, 90 * mg), of_serving(N::Sodium, B::AtMost, 720 * mg)};
constexpr Limit fiber_claim_fat[] = {of_small_too(N::TotalFat, B::AtMost, 3 * g)};

/// "High" and "good source": any nutrient with a Daily Value but total carbohydrate, and but those that other sections
/// have claims for. Source: 21 CFR 101.54(b) and (c).
constexpr N sources[] = {N::DietaryFiber, N::Protein,   N::VitaminD,   N::Calcium,    N::Iron,     N::Potassium,
                         N::VitaminA,     N::VitaminC,  N::VitaminE,   N::VitaminK,   N::Thiamin,  N::Riboflavin,
                         N::Niacin,       N::VitaminB6, N::Folate,     N::VitaminB12, N::Biotin,   N::PantothenicAcid,
                         N::Phosphorus,   N::Iodine,    N::Magnesium,  N::Zinc,       N::Selenium, N::Copper,
                         N::Manganese,    N::Chromium,  N::Molybdenum, N::Chloride,   N::Choline};
constexpr std::size_t source_count = std::size(sources);

template<std::size_t Each>
constexpr auto source_limits(B bound, std::int64_t percents)
{
    std::array<std::array<Limit, Each>, source_count> limits{};
    for (std::size_t i = 0; i < source_count; ++i) {
        limits[i][0] = {sources[i], bound, percents, C::PercentDailyValue};
        if constexpr (Each == 2)
            limits[i][1] = {sources[i], B::AtMost, 19, C::PercentDailyValue};
    }
    return limits;
}

constexpr auto high = source_limits<1>(B::AtLeast, 20);
constexpr auto good_source = source_limits<2>(B::AtLeast, 10);
constexpr auto high_potency = source_limits<1>(B::AtLeast, 100);

constexpr std::optional<Day> always{};

/// A claim for every food.
constexpr Rule claim(std::string_view key, S set, std::string_view citation, std::span<const Limit> limits,
                     Beyond beyond = Beyond::Nothing, F food = F::AnyFood)
{
    return {key, std::nullopt, set, citation, always, always, true, food, limits, beyond, JudgedBy::TrueContent};
}

constexpr Rule of_source(std::string_view key, N nutrient, std::string_view citation, std::span<const Limit> limits)
{
    return {key,    nutrient,        S::SourceClaims,      citation, always, always, true, F::AnyFood,
            limits, Beyond::Nothing, JudgedBy::TrueContent};
}

constexpr auto I = Beyond::Ingredients;
constexpr auto R = Beyond::ReferenceFood;
constexpr auto W = Beyond::PackageWords;
constexpr std::span<const Limit> no_limit{};

constexpr Rule fixed[] = {
    claim("calorie_free", S::CalorieClaims, "21 CFR 101.60(b)(1)", calorie_free),
    claim("low_calorie", S::CalorieClaims, "21 CFR 101.60(b)(2)", low_calorie),
    claim("low_calorie", S::CalorieClaims, "21 CFR 101.60(b)(3)", low_calorie_meal, {}, F::MealOrMainDish),
    claim("reduced_calorie", S::CalorieClaims, "21 CFR 101.60(b)(4)", no_limit, R),
    claim("reduced_calorie", S::CalorieClaims, "21 CFR 101.60(b)(5)", no_limit, R, F::MealOrMainDish),
    claim("light", S::CalorieClaims, "21 CFR 101.56(b)", no_limit, R),
    claim("light", S::CalorieClaims, "21 CFR 101.56(d)(1)", light_meal_calories, W, F::MealOrMainDish),

    claim("sugar_free", S::SugarClaims, "21 CFR 101.60(c)(1)", sugar_free, I),
    claim("no_added_sugar", S::SugarClaims, "21 CFR 101.60(c)(2)", no_limit, W),
    claim("reduced_sugar", S::SugarClaims, "21 CFR 101.60(c)(5)", no_limit, R),
    claim("reduced_sugar", S::SugarClaims, "21 CFR 101.60(c)(6)", no_limit, R, F::MealOrMainDish),

    claim("sodium_free", S::SodiumClaims, "21 CFR 101.61(b)(1)", sodium_free, I),
    claim("salt_free", S::SodiumClaims, "21 CFR 101.61(c)(1)", sodium_free, I),
    claim("very_low_sodium", S::SodiumClaims, "21 CFR 101.61(b)(2)", very_low_sodium),
    claim("very_low_sodium", S::SodiumClaims, "21 CFR 101.61(b)(3)", very_low_sodium_meal, {}, F::MealOrMainDish),
    claim("low_sodium", S::SodiumClaims, "21 CFR 101.61(b)(4)", low_sodium),
    claim("low_sodium", S::SodiumClaims, "21 CFR 101.61(b)(5)", low_sodium_meal, {}, F::MealOrMainDish),
    claim("light_in_sodium", S::SodiumClaims, "21 CFR 101.56(c)", no_limit, R),
    claim("light_in_sodium", S::SodiumClaims, "21 CFR 101.56(d)(2)", low_sodium_meal, {}, F::MealOrMainDish),
    claim("reduced_sodium", S::SodiumClaims, "21 CFR 101.61(b)(6)", no_limit, R),
    claim("reduced_sodium", S::SodiumClaims, "21 CFR 101.61(b)(7)", no_limit, R, F::MealOrMainDish),
    claim("lightly_salted", S::SodiumClaims, "21 CFR 101.56(g)", no_limit, R),
    claim("no_salt_added", S::SodiumClaims, "21 CFR 101.61(c)(2)", no_limit, W),

    claim("fat_free", S::FatClaims, "21 CFR 101.62(b)(1)", fat_free, I),
    claim("low_fat", S::FatClaims, "21 CFR 101.62(b)(2)", low_fat),
    claim("low_fat", S::FatClaims, "21 CFR 101.62(b)(3)", low_fat_meal, {}, F::MealOrMainDish),
    claim("percent_fat_free", S::FatClaims, "21 CFR 101.62(b)(6)", low_fat, I),
    claim("reduced_fat", S::FatClaims, "21 CFR 101.62(b)(4)", no_limit, R),
    claim("reduced_fat", S::FatClaims, "21 CFR 101.62(b)(5)", no_limit, R, F::MealOrMainDish),
    claim("light", S::FatClaims, "21 CFR 101.56(b)", no_limit, R),
    claim("light", S::FatClaims, "21 CFR 101.56(d)(1)", light_meal_fat, W, F::MealOrMainDish),

    claim("saturated_fat_free", S::SaturatedFatClaims, "21 CFR 101.62(c)(1)", saturated_fat_free),
    claim("low_saturated_fat", S::SaturatedFatClaims, "21 CFR 101.62(c)(2)", low_saturated_fat),
    claim("low_saturated_fat", S::SaturatedFatClaims, "21 CFR 101.62(c)(3)", low_saturated_fat_meal, {},
          F::MealOrMainDish),
    claim("reduced_saturated_fat", S::SaturatedFatClaims, "21 CFR 101.62(c)(4)", no_limit, R),

    claim("cholesterol_free", S::CholesterolClaims, "21 CFR 101.62(d)(1)", cholesterol_free, I),
    claim("low_cholesterol", S::CholesterolClaims, "21 CFR 101.62(d)(2)", low_cholesterol, I),
    claim("low_cholesterol", S::CholesterolClaims, "21 CFR 101.62(d)(3)", low_cholesterol_meal, I, F::MealOrMainDish),
    claim("reduced_cholesterol", S::CholesterolClaims, "21 CFR 101.62(d)(4)", reduced_cholesterol, R),

    claim("lean", S::LeanClaims, "21 CFR 101.62(e)(1)", lean, {}, F::Seafood),
    claim("lean", S::LeanClaims, "21 CFR 101.62(e)(2)", lean_by_piece, {}, F::MixedDishByPiece),
    claim("lean", S::LeanClaims, "21 CFR 101.62(e)(3)", lean_meal, {}, F::MealOrMainDish),
    claim("extra_lean", S::LeanClaims, "21 CFR 101.62(e)(4)", extra_lean, {}, F::Seafood),
    claim("extra_lean", S::LeanClaims, "21 CFR 101.62(e)(5)", extra_lean_meal, {}, F::MealOrMainDish),

    claim("more", S::SourceClaims, "21 CFR 101.54(e)(1)", no_limit, R),
    claim("more", S::SourceClaims, "21 CFR 101.54(e)(2)", no_limit, R, F::MealOrMainDish),

    claim("within_disclosure_levels", S::DisclosureLevels, "21 CFR 101.13(h)(1)", disclosure),
    claim("within_disclosure_levels", S::DisclosureLevels, "21 CFR 101.13(h)(2)", disclosure_meal, {}, F::Meal),
    claim("within_disclosure_levels", S::DisclosureLevels, "21 CFR 101.13(h)(3)", disclosure_main_dish, {},
          F::MainDish),
    claim("fiber_claim_without_fat", S::DisclosureLevels, "21 CFR 101.54(d)", fiber_claim_fat),
};
constexpr std::size_t fixed_count = std::size(fixed);

constexpr auto all = [] {
    std::array<Rule, fixed_count + 3 * source_count> rules{};
    for (std::size_t i = 0; i < fixed_count; ++i)
        rules[i] = fixed[i];
    for (std::size_t i = 0; i < source_count; ++i) {
        rules[fixed_count + 3 * i] = of_source("high", sources[i], "21 CFR 101.54(b)(1)", high[i]);
        rules[fixed_count + 3 * i + 1] = of_source("good_source", sources[i], "21 CFR 101.54(c)(1)", good_source[i]);
        rules[fixed_count + 3 * i + 2] = of_source("high_potency", sources[i], "21 CFR 101.54(f)(1)", high_potency[i]);
    }
    return rules;
}();

} // namespace

std::span<const Rule> claim_rules()
{
    return all;
}

} // namespace core
