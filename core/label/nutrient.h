// The nutrients of the Nutrition Facts panel and what is fixed for each. Source: 21 CFR 101.9(c) and (d).
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace core {

/// Every line that a panel of 2016 or before may print, in the order of the panel.
enum class Nutrient {
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

/// How many nutrients there are.
inline constexpr std::size_t nutrient_count = static_cast<std::size_t>(Nutrient::Fluoride) + 1;

/// The unit that a label prints for a nutrient.
enum class Unit { Kilocalorie, Gram, Milligram, Microgram };

/// How a label rounds a nutrient's amount: the row of core/figure/rounding_table.cpp.
enum class Rounding { Calories, Fat, Cholesterol, Sodium, Carbohydrate, Vitamin, Fluoride };

/// How a label rounds a nutrient's percent Daily Value.
enum class PercentRounding { None, Whole, Vitamin };

/// What is fixed for one nutrient.
struct NutrientInfo {
    Nutrient nutrient;
    std::string_view key; ///< "saturated_fat": the name in sheets, JSON and language files
    Unit unit;
    std::string_view unit_note; ///< what the label adds to the unit: "RAE", "NE", "DFE" or nothing
    Rounding rounding;
    PercentRounding percent;
    int indent;        ///< how far the panel sets it in: 0, 1 or 2
    bool since_2016;   ///< only labels of 2016 print it (added sugars)
    bool on_the_panel; ///< one of the lines that an adult label of 2016 always prints
};

/// All nutrients, in the order of the panel.
[[nodiscard]] std::span<const NutrientInfo> nutrients();

/// What is fixed for this nutrient.
[[nodiscard]] const NutrientInfo& info(Nutrient nutrient);

/// The nutrient with this key, such as "saturated_fat".
[[nodiscard]] std::optional<Nutrient> nutrient_by_key(std::string_view key);

/// "g", "mg", "mcg", or "" for calories.
[[nodiscard]] std::string_view unit_name(Unit unit);

/// How many billionths of the base unit (gram or kilocalorie) one such unit is.
[[nodiscard]] constexpr std::int64_t nano_of(Unit unit)
{
    switch (unit) {
    case Unit::Milligram:
        return 1'000'000;
    case Unit::Microgram:
        return 1'000;
    case Unit::Kilocalorie:
    case Unit::Gram:
        break;
    }
    return 1'000'000'000;
}

} // namespace core
