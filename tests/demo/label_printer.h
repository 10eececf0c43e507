// Prints the label of a true food as the rule has it printed: every figure of the demo catalog comes from here.
// Sources: 21 CFR 101.9(c), (d)(7)(ii), (e), (f) and (b)(8), by way of core/figure; the older panel as 101.9 stood
// before 27 July 2016.
#pragma once

#include "core/label/label.h"
#include "tests/demo/true_food.h"

#include <string>
#include <vector>

namespace test::demo {

/// The label of `food`. `foods` holds what it may be prepared with. Throws std::runtime_error where the row asks for a
/// label that the rule does not allow: a line left out that counts, a count of servings that the package does not hold.
[[nodiscard]] core::Label printed_label(const TrueFood& food, const std::vector<TrueFood>& foods);

/// All foods as a sheet: one header row, one label a row; the columns that docs/sheet.md tells of.
[[nodiscard]] std::string printed_sheet(const std::vector<TrueFood>& foods);

} // namespace test::demo
