#include "tests/core/figure/lawful.h"

#include <algorithm>
#include <utility>

namespace test {
namespace {

constexpr std::int64_t gram = 1'000'000'000; // also a calorie, a percent, a serving
constexpr std::int64_t mg = gram / 1'000;
constexpr std::int64_t mcg = mg / 1'000;

std::set<Print> set_of(const brute::Prints& prints)
{
    return {prints.begin(), prints.end()};
}

/// Halves up (docs/label-math.md says why).
Lawful by(brute::Kind kind)
{
    return [kind](std::int64_t t) { return set_of(brute::prints(kind, {t}, brute::Halves::Up)); };
}

NutrientRule banded(core::Nutrient nutrient, std::string source, Lawful lawful, std::int64_t grid, std::int64_t most,
                    std::int64_t finest)
{
    return {nutrient, core::Panel::Of2016, {std::move(source), std::move(lawful), grid, most, finest}};
}

/// `rdi` and both places in billionths; a place and each tenth of it down to a thousandth may be printed.
NutrientRule vitamin(core::Nutrient nutrient, std::int64_t rdi, std::int64_t code_place, std::int64_t guidance_place)
{
    const std::int64_t finest = std::max<std::int64_t>(code_place / 1'000, 1);
    const auto lawful = [=](std::int64_t t) {
        return set_of(brute::prints(brute::Places{rdi, code_place, guidance_place}, {t}, brute::Halves::Up));
    };
    return {nutrient, core::Panel::Of2016, {"21 CFR 101.9(c)(8)(iii)", lawful, rdi / 1'009, rdi + rdi / 2, finest}};
}

} // namespace

std::vector<NutrientRule> nutrient_rules()
{
    using N = core::Nutrient;
    std::vector<NutrientRule> rules{
        banded(N::Calories, "21 CFR 101.9(c)(1)", by(brute::Kind::Calories), gram / 20, 400 * gram, 5 * gram),
        banded(N::Cholesterol, "21 CFR 101.9(c)(3)", by(brute::Kind::Cholesterol), mg / 20, 120 * mg, 5 * mg),
        banded(N::Sodium, "21 CFR 101.9(c)(4)", by(brute::Kind::Sodium), mg / 20, 400 * mg, 5 * mg),
        banded(N::Fluoride, "21 CFR 101.9(c)(5)", by(brute::Kind::Fluoride), mg / 500, 4 * mg, mg / 10),
    };
    for (const auto nutrient :
         {N::TotalFat, N::SaturatedFat, N::TransFat, N::PolyunsaturatedFat, N::MonounsaturatedFat})
        rules.push_back(banded(nutrient, "21 CFR 101.9(c)(2)", by(brute::Kind::Fat), gram / 100, 30 * gram, gram / 2));
    for (const auto nutrient : {N::TotalCarbohydrate, N::DietaryFiber, N::SolubleFiber, N::InsolubleFiber,
                                N::TotalSugars, N::AddedSugars, N::SugarAlcohol, N::Protein})
        rules.push_back(banded(nutrient, "21 CFR 101.9(c)(6) and (c)(7)", by(brute::Kind::Carbohydrate), gram / 100,
                               30 * gram, gram));
    // Before 27 July 2016: potassium as sodium, 21 CFR 101.9(c)(5) as it stood; one fat, to see the panel change
    // nothing.
    rules.push_back(
        banded(N::Potassium, "21 CFR 101.9(c)(5) before 2016", by(brute::Kind::Sodium), mg / 20, 400 * mg, 5 * mg));
    rules.back().panel = core::Panel::Older;
    rules.push_back(
        banded(N::TotalFat, "21 CFR 101.9(c)(2) before 2016", by(brute::Kind::Fat), gram / 100, 30 * gram, gram / 2));
    rules.back().panel = core::Panel::Older;
    return rules;
}

std::vector<NutrientRule> vitamin_rules()
{
    using N = core::Nutrient;
    // RDI and place: 21 CFR 101.9(c)(8)(iv). Second place: FDA draft guidance of January 2017 (the tens are `memory`).
    return {
        vitamin(N::VitaminD, 20 * mcg, mcg, mcg / 10),
        vitamin(N::Calcium, 1'300 * mg, mg, 10 * mg),
        vitamin(N::Iron, 18 * mg, mg, mg / 10),
        vitamin(N::Potassium, 4'700 * mg, mg, 10 * mg),
        vitamin(N::VitaminA, 900 * mcg, mcg, 10 * mcg),
        vitamin(N::VitaminC, 90 * mg, mg, mg),
        vitamin(N::Thiamin, 12 * mg / 10, mg / 10, mg / 10),
        vitamin(N::VitaminB12, 24 * mcg / 10, mcg / 10, mcg / 10),
        vitamin(N::Copper, 9 * mg / 10, mg / 10, mg / 10),
        vitamin(N::Choline, 550 * mg, mg, 10 * mg),
    };
}

LawfulRule whole_percent_rule()
{
    return {"21 CFR 101.9(d)(7)(ii)", by(brute::Kind::WholePercent), gram / 50, 130 * gram, gram};
}

LawfulRule vitamin_percent_rule()
{
    return {"21 CFR 101.9(c)(8)(iii)", by(brute::Kind::VitaminPercent), gram / 50, 130 * gram, gram};
}

LawfulRule servings_rule()
{
    return {"21 CFR 101.9(b)(8)(i)", by(brute::Kind::Servings), gram / 100, 20 * gram, gram / 2};
}

LawfulRule serving_size_rule()
{
    return {"21 CFR 101.9(b)(7)(ii)", by(brute::Kind::ServingSize), gram / 200, 60 * gram, gram / 10};
}

} // namespace test
