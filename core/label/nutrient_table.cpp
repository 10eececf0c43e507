// One row a nutrient, in the order of the panel. Sources: 21 CFR 101.9(c) (names, units, rounding), (d)(7) and (d)(12)
// (order and indents), (c)(8)(iv) (units of vitamins and minerals).
#include "core/label/nutrient.h"

namespace core {
namespace {

using N = Nutrient;
using U = Unit;
using R = Rounding;
using P = PercentRounding;

constexpr NutrientInfo table[] = {
    // nutrient, key, unit, unit note, rounding, percent, indent, since 2016, on the panel
    {N::Calories, "calories", U::Kilocalorie, "", R::Calories, P::None, 0, false, true},
    {N::TotalFat, "total_fat", U::Gram, "", R::Fat, P::Whole, 0, false, true},
    {N::SaturatedFat, "saturated_fat", U::Gram, "", R::Fat, P::Whole, 1, false, true},
    {N::TransFat, "trans_fat", U::Gram, "", R::Fat, P::None, 1, false, true},
    {N::PolyunsaturatedFat, "polyunsaturated_fat", U::Gram, "", R::Fat, P::None, 1, false, false},
    {N::MonounsaturatedFat, "monounsaturated_fat", U::Gram, "", R::Fat, P::None, 1, false, false},
    {N::Cholesterol, "cholesterol", U::Milligram, "", R::Cholesterol, P::Whole, 0, false, true},
    {N::Sodium, "sodium", U::Milligram, "", R::Sodium, P::Whole, 0, false, true},
    {N::TotalCarbohydrate, "total_carbohydrate", U::Gram, "", R::Carbohydrate, P::Whole, 0, false, true},
    {N::DietaryFiber, "dietary_fiber", U::Gram, "", R::Carbohydrate, P::Whole, 1, false, true},
    {N::SolubleFiber, "soluble_fiber", U::Gram, "", R::Carbohydrate, P::None, 2, false, false},
    {N::InsolubleFiber, "insoluble_fiber", U::Gram, "", R::Carbohydrate, P::None, 2, false, false},
    {N::TotalSugars, "total_sugars", U::Gram, "", R::Carbohydrate, P::None, 1, false, true},
    {N::AddedSugars, "added_sugars", U::Gram, "", R::Carbohydrate, P::Whole, 2, true, true},
    {N::SugarAlcohol, "sugar_alcohol", U::Gram, "", R::Carbohydrate, P::None, 1, false, false},
    {N::Protein, "protein", U::Gram, "", R::Carbohydrate, P::Whole, 0, false, true},
    {N::VitaminD, "vitamin_d", U::Microgram, "", R::Vitamin, P::Vitamin, 0, false, true},
    {N::Calcium, "calcium", U::Milligram, "", R::Vitamin, P::Vitamin, 0, false, true},
    {N::Iron, "iron", U::Milligram, "", R::Vitamin, P::Vitamin, 0, false, true},
    {N::Potassium, "potassium", U::Milligram, "", R::Vitamin, P::Vitamin, 0, false, true},
    {N::VitaminA, "vitamin_a", U::Microgram, "RAE", R::Vitamin, P::Vitamin, 0, false, false},
    {N::VitaminC, "vitamin_c", U::Milligram, "", R::Vitamin, P::Vitamin, 0, false, false},
    {N::VitaminE, "vitamin_e", U::Milligram, "", R::Vitamin, P::Vitamin, 0, false, false},
    {N::VitaminK, "vitamin_k", U::Microgram, "", R::Vitamin, P::Vitamin, 0, false, false},
    {N::Thiamin, "thiamin", U::Milligram, "", R::Vitamin, P::Vitamin, 0, false, false},
    {N::Riboflavin, "riboflavin", U::Milligram, "", R::Vitamin, P::Vitamin, 0, false, false},
    {N::Niacin, "niacin", U::Milligram, "NE", R::Vitamin, P::Vitamin, 0, false, false},
    {N::VitaminB6, "vitamin_b6", U::Milligram, "", R::Vitamin, P::Vitamin, 0, false, false},
    {N::Folate, "folate", U::Microgram, "DFE", R::Vitamin, P::Vitamin, 0, false, false},
    {N::VitaminB12, "vitamin_b12", U::Microgram, "", R::Vitamin, P::Vitamin, 0, false, false},
    {N::Biotin, "biotin", U::Microgram, "", R::Vitamin, P::Vitamin, 0, false, false},
    {N::PantothenicAcid, "pantothenic_acid", U::Milligram, "", R::Vitamin, P::Vitamin, 0, false, false},
    {N::Phosphorus, "phosphorus", U::Milligram, "", R::Vitamin, P::Vitamin, 0, false, false},
    {N::Iodine, "iodine", U::Microgram, "", R::Vitamin, P::Vitamin, 0, false, false},
    {N::Magnesium, "magnesium", U::Milligram, "", R::Vitamin, P::Vitamin, 0, false, false},
    {N::Zinc, "zinc", U::Milligram, "", R::Vitamin, P::Vitamin, 0, false, false},
    {N::Selenium, "selenium", U::Microgram, "", R::Vitamin, P::Vitamin, 0, false, false},
    {N::Copper, "copper", U::Milligram, "", R::Vitamin, P::Vitamin, 0, false, false},
    {N::Manganese, "manganese", U::Milligram, "", R::Vitamin, P::Vitamin, 0, false, false},
    {N::Chromium, "chromium", U::Microgram, "", R::Vitamin, P::Vitamin, 0, false, false},
    {N::Molybdenum, "molybdenum", U::Microgram, "", R::Vitamin, P::Vitamin, 0, false, false},
    {N::Chloride, "chloride", U::Milligram, "", R::Vitamin, P::Vitamin, 0, false, false},
    {N::Choline, "choline", U::Milligram, "", R::Vitamin, P::Vitamin, 0, false, false},
    {N::Fluoride, "fluoride", U::Milligram, "", R::Fluoride, P::None, 0, false, false},
};

} // namespace

std::span<const NutrientInfo> nutrients()
{
    return table;
}

const NutrientInfo& info(Nutrient nutrient)
{
    return table[static_cast<std::size_t>(nutrient)];
}

std::optional<Nutrient> nutrient_by_key(std::string_view key)
{
    for (const auto& row : table)
        if (row.key == key)
            return row.nutrient;
    return std::nullopt;
}

std::string_view unit_name(Unit unit)
{
    switch (unit) {
    case Unit::Gram:
        return "g";
    case Unit::Milligram:
        return "mg";
    case Unit::Microgram:
        return "mcg";
    case Unit::Kilocalorie:
        break;
    }
    return "";
}

} // namespace core
