// How labels round: rows only. Sources: 21 CFR 101.9 as each row says. Where the Code says "may be expressed as zero",
// the first band starts at 0, since the maker may follow it instead; where it says "shall", it starts where zero ends.
#include "core/figure/rounding_table.h"

#include <cstddef>

namespace core {
namespace {

constexpr std::int64_t g = 1'000'000'000;
constexpr std::int64_t kcal = g;
constexpr std::int64_t mg = 1'000'000;
constexpr std::int64_t mcg = 1'000;
constexpr std::int64_t one = g; // a percent, a serving

constexpr Band calories[] = {{0, 5 * kcal}, {50 * kcal, 10 * kcal}};
constexpr Band fat[] = {{g / 2, g / 2}, {5 * g, g}};
constexpr Band cholesterol[] = {{0, 5 * mg}};
constexpr Band sodium[] = {{5 * mg, 5 * mg}, {140 * mg, 10 * mg}};
constexpr Band carbohydrate[] = {{0, g}};
constexpr Band fluoride[] = {{mg / 10, mg / 10}, {8 * mg / 10, 2 * mg / 10}};
constexpr Band whole_percent[] = {{0, one}};
constexpr Band vitamin_percent[] = {{0, 2 * one}, {10 * one, 5 * one}, {50 * one, 10 * one}};
constexpr Band servings[] = {{0, one}, {2 * one, one / 2}, {5 * one, one}};
constexpr Band serving_size[] = {{0, one / 10}, {2 * one, one / 2}, {5 * one, one}};

// citation, zero below, less than, from, first, holds its end, may be left out below, bands
constexpr RoundingRule calories_rule{"21 CFR 101.9(c)(1)", 5 * kcal, 0, 0, 0, false, 5 * kcal, calories};
constexpr RoundingRule fat_rule{"21 CFR 101.9(c)(2)", g / 2, 0, 0, 0, false, g / 2, fat};
constexpr RoundingRule cholesterol_rule{"21 CFR 101.9(c)(3)", 2 * mg, 5 * mg, 2 * mg, 2 * mg, true, 2 * mg,
                                        cholesterol};
constexpr RoundingRule sodium_rule{"21 CFR 101.9(c)(4)", 5 * mg, 0, 0, 0, false, 5 * mg, sodium};
constexpr RoundingRule carbohydrate_rule{"21 CFR 101.9(c)(6)", g / 2, g, 0, g / 2, false, g, carbohydrate};
constexpr RoundingRule fluoride_rule{"21 CFR 101.9(c)(5)", mg / 10, 0, 0, 0, false, mg / 10, fluoride};
constexpr RoundingRule whole_percent_rule{"21 CFR 101.9(d)(7)(ii)", 0, one, 0, one, false, 0, whole_percent};
constexpr RoundingRule vitamin_percent_rule{
    "21 CFR 101.9(c)(8)(iii)", 2 * one, 2 * one, 0, 2 * one, false, 2 * one, vitamin_percent};

using N = Nutrient;

// Guidance: below an RDI of 25 tenths, from 25 to 250 ones, above tens (`memory` for most rows; the Code's own place is
// verified). A printed figure is read back by the widest of the places that could have made it.
constexpr VitaminPlace places[] = {
    {N::VitaminD, mcg, mcg / 10},
    {N::Calcium, mg, 10 * mg},
    {N::Iron, mg, mg / 10},
    {N::Potassium, mg, 10 * mg},
    {N::VitaminA, mcg, 10 * mcg},
    {N::VitaminC, mg, mg},
    {N::VitaminE, mg, mg / 10},
    {N::VitaminK, mcg, mcg},
    {N::Thiamin, mg / 10, mg / 10},
    {N::Riboflavin, mg / 10, mg / 10},
    {N::Niacin, mg, mg / 10},
    {N::VitaminB6, mg / 10, mg / 10},
    {N::Folate, mcg, 10 * mcg},
    {N::VitaminB12, mcg / 10, mcg / 10},
    {N::Biotin, mcg, mcg},
    {N::PantothenicAcid, mg, mg / 10},
    {N::Phosphorus, mg, 10 * mg},
    {N::Iodine, mcg, mcg},
    {N::Magnesium, mg, 10 * mg},
    {N::Zinc, mg, mg / 10},
    {N::Selenium, mcg, mcg},
    {N::Copper, mg / 10, mg / 10},
    {N::Manganese, mg / 10, mg / 10},
    {N::Chromium, mcg, mcg},
    {N::Molybdenum, mcg, mcg},
    {N::Chloride, mg, 10 * mg},
    {N::Choline, mg, 10 * mg},
};

} // namespace

const RoundingRule* rounding_rule(Nutrient nutrient, Panel panel)
{
    switch (info(nutrient).rounding) {
    case Rounding::Calories:
        return &calories_rule;
    case Rounding::Fat:
        return &fat_rule;
    case Rounding::Cholesterol:
        return &cholesterol_rule;
    case Rounding::Sodium:
        return &sodium_rule;
    case Rounding::Carbohydrate:
        return &carbohydrate_rule;
    case Rounding::Fluoride:
        return &fluoride_rule;
    case Rounding::Vitamin:
        break;
    }
    // Before 27 July 2016 potassium was rounded like sodium: 21 CFR 101.9(c)(5) as it stood.
    return nutrient == Nutrient::Potassium && panel == Panel::Older ? &sodium_rule : nullptr;
}

const VitaminPlace* vitamin_place(Nutrient nutrient)
{
    for (const auto& place : places)
        if (place.nutrient == nutrient)
            return &place;
    return nullptr;
}

const RoundingRule& percent_rule(PercentRounding rounding)
{
    return rounding == PercentRounding::Vitamin ? vitamin_percent_rule : whole_percent_rule;
}

std::span<const Band> serving_bands()
{
    return servings;
}

std::span<const Band> serving_size_bands()
{
    return serving_size;
}

} // namespace core
