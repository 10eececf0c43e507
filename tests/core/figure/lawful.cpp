#include "tests/core/figure/lawful.h"

#include <algorithm>
#include <utility>

namespace test {
namespace {

constexpr std::int64_t gram = 1'000'000'000; // also a calorie, a percent, a serving
constexpr std::int64_t mg = gram / 1'000;
constexpr std::int64_t mcg = mg / 1'000;

/// The nearest multiple of `step`, halves up (docs/label-math.md says why).
Print to_nearest(std::int64_t t, std::int64_t step)
{
    const std::int64_t below = t - t % step;
    const bool up = t - below >= below + step - t;
    return {up ? below + step : below};
}

const Print zero{0};

std::set<Print> calories(std::int64_t t)
{
    if (t < 5 * gram)
        return {zero, to_nearest(t, 5 * gram)}; // "may be expressed as zero"
    return {to_nearest(t, t <= 50 * gram ? 5 * gram : 10 * gram)};
}

std::set<Print> fat(std::int64_t t)
{
    if (t < gram / 2)
        return {zero}; // "shall be expressed as zero"
    return {to_nearest(t, t < 5 * gram ? gram / 2 : gram)};
}

std::set<Print> cholesterol(std::int64_t t)
{
    std::set<Print> prints{to_nearest(t, 5 * mg)};
    if (t < 2 * mg)
        prints.insert(zero); // "may be stated as zero"
    if (t >= 2 * mg && t <= 5 * mg)
        prints.insert({5 * mg, true}); // "may be stated as less than 5 milligrams"
    return prints;
}

std::set<Print> sodium(std::int64_t t)
{
    if (t < 5 * mg)
        return {zero}; // "shall be expressed as zero"
    return {to_nearest(t, t <= 140 * mg ? 5 * mg : 10 * mg)};
}

std::set<Print> carbohydrate(std::int64_t t)
{
    std::set<Print> prints{to_nearest(t, gram)};
    if (t < gram)
        prints.insert({gram, true}); // "less than 1 gram" may be used
    if (t < gram / 2)
        prints.insert(zero); // "may be expressed as zero"
    return prints;
}

std::set<Print> fluoride(std::int64_t t)
{
    if (t < mg / 10)
        return {zero};
    return {to_nearest(t, t <= 8 * mg / 10 ? mg / 10 : 2 * mg / 10)};
}

std::set<Print> whole_percent(std::int64_t t)
{
    std::set<Print> prints{to_nearest(t, gram)};
    if (t < gram)
        prints.insert({gram, true}); // "<1%" stands on labels (common practice; the paragraph is silent)
    return prints;
}

std::set<Print> vitamin_percent(std::int64_t t)
{
    if (t < 2 * gram) // need not be declared; 0, or "less than 2 percent", or to the nearest 2
        return {zero, {2 * gram, true}, to_nearest(t, 2 * gram)};
    if (t <= 10 * gram)
        return {to_nearest(t, 2 * gram)};
    return {to_nearest(t, t <= 50 * gram ? 5 * gram : 10 * gram)};
}

std::set<Print> servings(std::int64_t t)
{
    return {to_nearest(t, t >= 2 * gram && t <= 5 * gram ? gram / 2 : gram)};
}

std::set<Print> serving_size(std::int64_t t)
{
    if (t < 2 * gram)
        return {to_nearest(t, gram / 10)};
    return {to_nearest(t, t < 5 * gram ? gram / 2 : gram)};
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
        std::set<Print> prints{to_nearest(t, code_place), to_nearest(t, guidance_place)};
        for (std::int64_t finer = code_place / 10; finer >= finest; finer /= 10)
            prints.insert(to_nearest(t, finer));
        if (t < rdi / 50)
            prints.insert(zero);
        return prints;
    };
    return {nutrient, core::Panel::Of2016, {"21 CFR 101.9(c)(8)(iii)", lawful, rdi / 1'009, rdi + rdi / 2, finest}};
}

} // namespace

std::vector<NutrientRule> nutrient_rules()
{
    using N = core::Nutrient;
    std::vector<NutrientRule> rules{
        banded(N::Calories, "21 CFR 101.9(c)(1)", calories, gram / 20, 400 * gram, 5 * gram),
        banded(N::Cholesterol, "21 CFR 101.9(c)(3)", cholesterol, mg / 20, 120 * mg, 5 * mg),
        banded(N::Sodium, "21 CFR 101.9(c)(4)", sodium, mg / 20, 400 * mg, 5 * mg),
        banded(N::Fluoride, "21 CFR 101.9(c)(5)", fluoride, mg / 500, 4 * mg, mg / 10),
    };
    for (const auto nutrient :
         {N::TotalFat, N::SaturatedFat, N::TransFat, N::PolyunsaturatedFat, N::MonounsaturatedFat})
        rules.push_back(banded(nutrient, "21 CFR 101.9(c)(2)", fat, gram / 100, 30 * gram, gram / 2));
    for (const auto nutrient : {N::TotalCarbohydrate, N::DietaryFiber, N::SolubleFiber, N::InsolubleFiber,
                                N::TotalSugars, N::AddedSugars, N::SugarAlcohol, N::Protein})
        rules.push_back(banded(nutrient, "21 CFR 101.9(c)(6) and (c)(7)", carbohydrate, gram / 100, 30 * gram, gram));
    // Before 27 July 2016: potassium as sodium, 21 CFR 101.9(c)(5) as it stood; one fat, to see the panel change
    // nothing.
    rules.push_back(banded(N::Potassium, "21 CFR 101.9(c)(5) before 2016", sodium, mg / 20, 400 * mg, 5 * mg));
    rules.back().panel = core::Panel::Older;
    rules.push_back(banded(N::TotalFat, "21 CFR 101.9(c)(2) before 2016", fat, gram / 100, 30 * gram, gram / 2));
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
    return {"21 CFR 101.9(d)(7)(ii)", whole_percent, gram / 50, 130 * gram, gram};
}

LawfulRule vitamin_percent_rule()
{
    return {"21 CFR 101.9(c)(8)(iii)", vitamin_percent, gram / 50, 130 * gram, gram};
}

LawfulRule servings_rule()
{
    return {"21 CFR 101.9(b)(8)(i)", servings, gram / 100, 20 * gram, gram / 2};
}

LawfulRule serving_size_rule()
{
    return {"21 CFR 101.9(b)(7)(ii)", serving_size, gram / 200, 60 * gram, gram / 10};
}

} // namespace test
