// From a category of the FoodData Central release to the reference amount of its foods, where one clearly fits.
// Rows: core/rules/categories_table.cpp.
#pragma once

#include "core/rules/reference_amounts.h"

#include <span>
#include <string_view>

namespace core {

/// One category of Branded Foods ("branded_food_category"), in the release's words.
struct CategoryRow {
    std::string_view category;
    std::string_view reference_food; ///< a key of core/rules/reference_amounts_table.cpp
};

/// All rows, by rising category.
[[nodiscard]] std::span<const CategoryRow> category_rows();

/// The reference amount of a category; nullptr where the table has no row for it. For every product of a load: quick.
[[nodiscard]] const ReferenceAmount* reference_of_category(std::string_view category);

} // namespace core
