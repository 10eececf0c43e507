// The nutrients of a FoodData Central release that labels print. Source: nutrient.csv of the releases (numbers, units);
// the decimals of the amounts were counted in 4,827 branded foods of October 2023.
#pragma once

#include "core/label/nutrient.h"

#include <array>
#include <cstdint>
#include <string_view>

namespace catalog {

/// One nutrient of a release.
struct ReleaseNutrient {
    int id;                  ///< nutrient_id
    core::Nutrient nutrient; ///< the line of the label
    std::string_view unit;   ///< as nutrient.csv writes it
    std::int64_t unit_nano;  ///< how many billionths of a gram (or kilocalorie) one unit is
    int decimals;            ///< to which amounts per 100 are rounded
    /// In units: the Daily Value of labels before 2016, where they print nothing but a percent of it. 0: amounts are
    /// printed.
    int daily_value_of_percent;
    std::string_view number; ///< nutrient_nbr
};

/// All of them; where a food has several of one nutrient, the row that stands first here wins. Daily Values in IU: 21
/// CFR 101.9(c)(8)(iv) before 27 July 2016.
inline constexpr std::array release_nutrients = [] {
    using enum core::Nutrient;
    constexpr std::int64_t g = 1'000'000'000;
    constexpr std::int64_t mg = 1'000'000;
    constexpr std::int64_t mcg = 1'000;
    constexpr std::int64_t iu_of_vitamin_d = 25;  // 40 IU are 1 mcg: 21 CFR 101.9(c)(8)(iv), footnote
    constexpr std::int64_t iu_of_vitamin_a = 300; // 1 IU is 0.3 mcg of retinol (National Academies, DRI tables; memory)
    constexpr std::int64_t iu_of_vitamin_e = 667'000; // 1 IU is 0.67 mg of natural alpha-tocopherol (the same; memory)
    return std::array{
        ReleaseNutrient{1008, Calories, "KCAL", g, 0, 0, "208"},
        ReleaseNutrient{1004, TotalFat, "G", g, 2, 0, "204"},
        ReleaseNutrient{1085, TotalFat, "G", g, 2, 0, "298"},
        ReleaseNutrient{1258, SaturatedFat, "G", g, 2, 0, "606"},
        ReleaseNutrient{1257, TransFat, "G", g, 2, 0, "605"},
        ReleaseNutrient{1293, PolyunsaturatedFat, "G", g, 2, 0, "646"},
        ReleaseNutrient{1292, MonounsaturatedFat, "G", g, 2, 0, "645"},
        ReleaseNutrient{1253, Cholesterol, "MG", mg, 0, 0, "601"},
        ReleaseNutrient{1093, Sodium, "MG", mg, 0, 0, "307"},
        ReleaseNutrient{1005, TotalCarbohydrate, "G", g, 2, 0, "205"},
        ReleaseNutrient{1079, DietaryFiber, "G", g, 1, 0, "291"},
        ReleaseNutrient{1082, SolubleFiber, "G", g, 1, 0, "295"},
        ReleaseNutrient{1084, InsolubleFiber, "G", g, 1, 0, "297"},
        ReleaseNutrient{2000, TotalSugars, "G", g, 2, 0, "269"},
        ReleaseNutrient{1063, TotalSugars, "G", g, 2, 0, "269.3"},
        ReleaseNutrient{1235, AddedSugars, "G", g, 1, 0, "539"},
        ReleaseNutrient{1086, SugarAlcohol, "G", g, 2, 0, "299"},
        ReleaseNutrient{1003, Protein, "G", g, 2, 0, "203"},
        ReleaseNutrient{1114, VitaminD, "UG", mcg, 0, 0, "328"},
        ReleaseNutrient{1110, VitaminD, "IU", iu_of_vitamin_d, 0, 0, "324"},
        ReleaseNutrient{1087, Calcium, "MG", mg, 0, 0, "301"},
        ReleaseNutrient{1089, Iron, "MG", mg, 2, 0, "303"},
        ReleaseNutrient{1092, Potassium, "MG", mg, 0, 0, "306"},
        ReleaseNutrient{1106, VitaminA, "UG", mcg, 0, 0, "320"},
        ReleaseNutrient{2067, VitaminA, "UG", mcg, 0, 0, "960"},
        ReleaseNutrient{1104, VitaminA, "IU", iu_of_vitamin_a, 0, 5'000, "318"},
        ReleaseNutrient{1162, VitaminC, "MG", mg, 1, 0, "401"},
        ReleaseNutrient{1109, VitaminE, "MG", mg, 2, 0, "323"},
        ReleaseNutrient{1124, VitaminE, "IU", iu_of_vitamin_e, 0, 30, "340"},
        ReleaseNutrient{1185, VitaminK, "UG", mcg, 1, 0, "430"},
        ReleaseNutrient{1165, Thiamin, "MG", mg, 3, 0, "404"},
        ReleaseNutrient{1166, Riboflavin, "MG", mg, 3, 0, "405"},
        ReleaseNutrient{1167, Niacin, "MG", mg, 3, 0, "406"},
        ReleaseNutrient{1175, VitaminB6, "MG", mg, 3, 0, "415"},
        ReleaseNutrient{1190, Folate, "UG", mcg, 0, 0, "435"},
        ReleaseNutrient{1177, Folate, "UG", mcg, 0, 0, "417"},
        ReleaseNutrient{1178, VitaminB12, "UG", mcg, 2, 0, "418"},
        ReleaseNutrient{1176, Biotin, "UG", mcg, 1, 0, "416"},
        ReleaseNutrient{1170, PantothenicAcid, "MG", mg, 3, 0, "410"},
        ReleaseNutrient{1091, Phosphorus, "MG", mg, 0, 0, "305"},
        ReleaseNutrient{1100, Iodine, "UG", mcg, 1, 0, "314"},
        ReleaseNutrient{1090, Magnesium, "MG", mg, 0, 0, "304"},
        ReleaseNutrient{1095, Zinc, "MG", mg, 2, 0, "309"},
        ReleaseNutrient{1103, Selenium, "UG", mcg, 1, 0, "317"},
        ReleaseNutrient{1098, Copper, "MG", mg, 3, 0, "312"},
        ReleaseNutrient{1101, Manganese, "MG", mg, 3, 0, "315"},
        ReleaseNutrient{1096, Chromium, "UG", mcg, 1, 0, "310"},
        ReleaseNutrient{1102, Molybdenum, "UG", mcg, 1, 0, "316"},
        ReleaseNutrient{1088, Chloride, "MG", mg, 0, 0, "302"},
        ReleaseNutrient{1180, Choline, "MG", mg, 1, 0, "421"},
    };
}();

/// Its place in release_nutrients, or -1 for a nutrient that no label prints.
[[nodiscard]] constexpr int release_nutrient_at(int id)
{
    for (std::size_t i = 0; i < release_nutrients.size(); ++i)
        if (release_nutrients[i].id == id)
            return static_cast<int>(i);
    return -1;
}

} // namespace catalog
