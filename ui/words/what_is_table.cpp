// One row a word. Names of FDA's pages and tables are from memory; what they say is told in plain words, and shorter.
#include "ui/words/what_is.h"

namespace ui {
namespace {

using T = TextId;

constexpr std::string_view practice = "common practice";
constexpr std::string_view serving = "FDA, Serving Size on the Nutrition Facts Label; 21 CFR 101.9(b)(1)";
constexpr std::string_view container = "21 CFR 101.9(b)(8)";
constexpr std::string_view daily = "FDA, The Lows and Highs of Percent Daily Value on the Nutrition Facts Label";
constexpr std::string_view measure = "21 CFR 101.9(b)(5)";
constexpr std::string_view net = "21 CFR 101.7(a), (g)";
constexpr std::string_view packaged = "21 CFR 101.9(b)(9)";
constexpr std::string_view prepared = "21 CFR 101.9(e), (h)(4)";
constexpr std::string_view little = "21 CFR 101.9(c), on each line that may be left out";
constexpr std::string_view of_2016 = "81 FR 33742 (May 27, 2016)";
constexpr std::string_view by_weight = "21 CFR 101.4(a)(1)";
constexpr std::string_view whole = "FDA, Draft Guidance: Whole Grain Label Statements (2006)";
constexpr std::string_view majors = "21 U.S.C. 321(qq), by FALCPA (2004) and the FASTER Act (2021)";
constexpr std::string_view contains = "21 U.S.C. 343(w)(1)(A)";
constexpr std::string_view trans = "FDA, Trans Fat";
constexpr std::string_view dietitians = "Commission on Dietetic Registration, registered dietitian";
constexpr std::string_view handbook = "NIST Handbook 130, Uniform Unit Pricing Regulation";
constexpr std::string_view racc = "21 CFR 101.12(b)";
constexpr std::string_view claims = "21 CFR 101.13(a), (b)";
constexpr std::string_view wic = "USDA, WIC; 7 CFR 246.1";
constexpr std::string_view cacfp = "USDA, Child and Adult Care Food Program; 7 CFR 226.1";
constexpr std::string_view cfr = "National Archives, About the Code of Federal Regulations";
constexpr std::string_view fda = "FDA, What We Do";
constexpr std::string_view usda = "USDA, About";
constexpr std::string_view volumes = "21 CFR 101.9(b)(5)(viii)";
constexpr std::string_view interactive = "FDA, Interactive Nutrition Facts Label, the page of this nutrient";
constexpr std::string_view chart = "FDA, Interactive Nutrition Facts Label, Vitamins and Minerals Chart";
constexpr std::string_view sodium = "FDA, Sodium in Your Diet";
constexpr std::string_view added = "FDA, Added Sugars on the Nutrition Facts Label";
constexpr std::string_view panel_c2 = "21 CFR 101.9(c)(2)";
constexpr std::string_view panel_c6 = "21 CFR 101.9(c)(6); FDA, Interactive Nutrition Facts Label, Total Carbohydrate";
constexpr std::string_view fluoride = "NIH, Office of Dietary Supplements, Fluoride";

constexpr WhatIs rows[] = {
    // word, sentence, source
    {T::term_serving_size, T::what_serving_size, serving},
    {T::term_servings, T::what_servings, container},
    {T::n_calories, T::what_calories, interactive},
    {T::term_daily_value, T::what_daily_value, daily},
    {T::term_guide, T::what_guide, daily},
    {T::term_same_amount, T::what_same_amount, practice},
    {T::term_household, T::what_household, measure},
    {T::term_net_quantity, T::what_net_quantity, net},
    {T::term_as_packaged, T::what_as_packaged, packaged},
    {T::term_as_prepared, T::what_as_prepared, prepared},
    {T::term_not_significant, T::what_not_significant, little},
    {T::term_rule_2016, T::what_rule_2016, of_2016},
    {T::n_total_fat, T::what_total_fat, panel_c2},
    {T::n_saturated_fat, T::what_saturated_fat, interactive},
    {T::n_trans_fat, T::what_trans_fat, trans},
    {T::n_polyunsaturated_fat, T::what_polyunsaturated_fat, interactive},
    {T::n_monounsaturated_fat, T::what_monounsaturated_fat, interactive},
    {T::n_cholesterol, T::what_cholesterol, interactive},
    {T::n_sodium, T::what_sodium, sodium},
    {T::n_total_carbohydrate, T::what_total_carbohydrate, panel_c6},
    {T::n_dietary_fiber, T::what_dietary_fiber, interactive},
    {T::n_soluble_fiber, T::what_soluble_fiber, interactive},
    {T::n_insoluble_fiber, T::what_insoluble_fiber, interactive},
    {T::n_total_sugars, T::what_total_sugars, added},
    {T::n_added_sugars, T::what_added_sugars, added},
    {T::n_sugar_alcohol, T::what_sugar_alcohol, interactive},
    {T::n_protein, T::what_protein, interactive},
    {T::n_vitamin_d, T::what_vitamin_d, chart},
    {T::n_calcium, T::what_calcium, chart},
    {T::n_iron, T::what_iron, chart},
    {T::n_potassium, T::what_potassium, chart},
    {T::n_vitamin_a, T::what_vitamin_a, chart},
    {T::n_vitamin_c, T::what_vitamin_c, chart},
    {T::n_vitamin_e, T::what_vitamin_e, chart},
    {T::n_vitamin_k, T::what_vitamin_k, chart},
    {T::n_thiamin, T::what_thiamin, chart},
    {T::n_riboflavin, T::what_riboflavin, chart},
    {T::n_niacin, T::what_niacin, chart},
    {T::n_vitamin_b6, T::what_vitamin_b6, chart},
    {T::n_folate, T::what_folate, chart},
    {T::n_vitamin_b12, T::what_vitamin_b12, chart},
    {T::n_biotin, T::what_biotin, chart},
    {T::n_pantothenic_acid, T::what_pantothenic_acid, chart},
    {T::n_phosphorus, T::what_phosphorus, chart},
    {T::n_iodine, T::what_iodine, chart},
    {T::n_magnesium, T::what_magnesium, chart},
    {T::n_zinc, T::what_zinc, chart},
    {T::n_selenium, T::what_selenium, chart},
    {T::n_copper, T::what_copper, chart},
    {T::n_manganese, T::what_manganese, chart},
    {T::n_chromium, T::what_chromium, chart},
    {T::n_molybdenum, T::what_molybdenum, chart},
    {T::n_chloride, T::what_chloride, chart},
    {T::n_choline, T::what_choline, chart},
    {T::n_fluoride, T::what_fluoride, fluoride},
    {T::term_first_grain, T::what_first_grain, by_weight},
    {T::term_whole_grain, T::what_whole_grain, whole},
    {T::term_concentrated_juice, T::what_concentrated_juice, practice},
    {T::term_allergen, T::what_allergen, majors},
    {T::term_contains, T::what_contains, contains},
    {T::term_crustaceans, T::what_crustaceans, majors},
    {T::term_tree_nuts, T::what_tree_nuts, majors},
    {T::term_hydrogenated, T::what_hydrogenated, trans},
    {T::term_dietitian, T::what_dietitian, dietitians},
    {T::term_unit_price, T::what_unit_price, handbook},
    {T::term_nist, T::what_nist, handbook},
    {T::term_reference, T::what_reference, racc},
    {T::term_claim, T::what_claim, claims},
    {T::term_wic, T::what_wic, wic},
    {T::term_cacfp, T::what_cacfp, cacfp},
    {T::term_child_programs, T::what_child_programs, practice},
    {T::term_cfr, T::what_cfr, cfr},
    {T::term_fda, T::what_fda, fda},
    {T::term_usda, T::what_usda, usda},
    {T::term_g, T::what_g, volumes},
    {T::term_mg, T::what_mg, practice},
    {T::term_mcg, T::what_mcg, practice},
    {T::term_kg, T::what_kg, practice},
    {T::term_oz, T::what_oz, practice},
    {T::term_lb, T::what_lb, practice},
    {T::term_ml, T::what_ml, volumes},
    {T::term_l, T::what_l, practice},
    {T::term_fl_oz, T::what_fl_oz, volumes},
    {T::term_tbsp, T::what_tbsp, volumes},
    {T::term_tsp, T::what_tsp, volumes},
    {T::term_pt, T::what_pt, practice},
    {T::term_qt, T::what_qt, practice},
    {T::term_gal, T::what_gal, practice},
};

} // namespace

std::span<const WhatIs> what_is_table()
{
    return rows;
}

} // namespace ui
