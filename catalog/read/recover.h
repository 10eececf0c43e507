// From an amount per 100 g or mL, as a release keeps it, back to the figure that the label prints per serving.
// Sources: FoodData Central, Branded Foods (amount = printed figure x 100 / serving size, then rounded to the decimals
// of the nutrient; field descriptions of April 2019, counted in October 2023); 21 CFR 101.9(c) (which figures a label
// can print).
#pragma once

#include "catalog/read/release_nutrients_table.h"
#include "core/label/label.h"

#include <cstdint>

namespace catalog {

/// A decimal number as it stands in a release: `mantissa` with the point moved `decimals` places to the left.
struct ReleaseAmount {
    std::uint32_t mantissa = 0;
    std::int8_t decimals = 0;
};

/// How the maker gave an amount to the release: food_nutrient_derivation.csv.
enum class Derivation : std::uint8_t {
    None,        ///< nothing says so: the amount may be one per serving (seen in records of 2025 and later)
    PerServing,  ///< 70, 71: an amount per serving
    LessThan,    ///< 73: "less than 1 g" stands as 1 g
    PercentOnly, ///< 75: the label prints a percent Daily Value
    PerHundred,  ///< 78: an amount per 100, finer than a label's
    Other,
};

/// The derivation of a number such as 70.
[[nodiscard]] Derivation derivation_of(std::uint32_t id);

/// What is known of a record when its figures are worked out.
struct ServingBehind {
    std::int64_t micro;     ///< the serving size in millionths of a gram or millilitre; above 0
    core::Panel panel;      ///< the label's format
    int significant_digits; ///< amounts were cut to so many (JSON downloads: 3); 0: they were not
};

/// The line of the label behind an amount. `worked_back` where more than one printable figure rounds to the amount,
/// where none does, or where nothing says what the amount was made from.
[[nodiscard]] core::Line recover(const ReleaseNutrient& nutrient, ReleaseAmount amount, Derivation derivation,
                                 const ServingBehind& serving);

} // namespace catalog
