// The number by which a catalog file names each nutrient. Add at the end; never change what stands here, or old
// catalogs are read wrongly.
#pragma once

#include "core/label/nutrient.h"

#include <algorithm>
#include <array>

namespace catalog {

/// The nutrient of each number, from 0.
inline constexpr std::array nutrient_numbers = [] {
    using enum core::Nutrient;
    return std::array{
        Calories,
        TotalFat,
        SaturatedFat,
        TransFat,
        PolyunsaturatedFat,
        MonounsaturatedFat,
        Cholesterol,
        Sodium,
        TotalCarbohydrate,
        DietaryFiber,
        SolubleFiber,
        InsolubleFiber,
        TotalSugars,
        AddedSugars,
        SugarAlcohol,
        Protein,
        VitaminD,
        Calcium,
        Iron,
        Potassium,
        VitaminA,
        VitaminC,
        VitaminE,
        VitaminK,
        Thiamin,
        Riboflavin,
        Niacin,
        VitaminB6,
        Folate,
        VitaminB12,
        Biotin,
        PantothenicAcid,
        Phosphorus,
        Iodine,
        Magnesium,
        Zinc,
        Selenium,
        Copper,
        Manganese,
        Chromium,
        Molybdenum,
        Chloride,
        Choline,
        Fluoride,
    };
}();
static_assert(nutrient_numbers.size() == core::nutrient_count, "every nutrient needs a number of its own");

/// The number of a nutrient.
[[nodiscard]] constexpr unsigned number_of(core::Nutrient nutrient)
{
    return static_cast<unsigned>(std::find(nutrient_numbers.begin(), nutrient_numbers.end(), nutrient) -
                                 nutrient_numbers.begin());
}

} // namespace catalog
