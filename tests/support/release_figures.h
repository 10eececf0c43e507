// Labels of invented foods, printed by the rounding rule, and what a release makes of them.
#pragma once

#include "tests/support/release_maker.h"
#include "tests/support/release_texts.h"

#include <span>

namespace test {

/// A nutrient as nutrient.csv names it.
struct PublishedNutrient {
    int id;
    core::Nutrient nutrient;
    const char* name;
    const char* unit;
    const char* number;
    int decimals;           ///< of an amount in food_nutrient.csv
    std::int64_t unit_nano; ///< how many billionths of the base unit one published unit is
};

/// Those that labels print.
[[nodiscard]] std::span<const PublishedNutrient> published_nutrients();

/// No record has more figures.
inline constexpr std::size_t most_figures = 16;

/// Fills in serving and figures of a food: fourteen figures as a label of 2016 or before prints them.
void make_figures(Dice& dice, bool older_panel, MadeRecord& record);

/// A category of the release whose foods come in such servings; now and then another one.
[[nodiscard]] const char* category_text(Dice& dice, const MadeRecord& record);

/// The serving size as published: a 32-bit float printed in full.
[[nodiscard]] std::string serving_text(const MadeRecord& record);

/// g and ml, since March 2023 GRM and MLT; some blanks and some wrong ones.
[[nodiscard]] std::string unit_text(Dice& dice, const MadeRecord& record);

/// "1 cup", "2 COOKIES", "1 ONZ".
[[nodiscard]] std::string household_text(Dice& dice, const MadeRecord& record);

/// "12 oz/340 g".
[[nodiscard]] std::string weight_text(Dice& dice, const MadeRecord& record);

} // namespace test
