// Finds one nutrient in a comparison, for tests.
#pragma once

#include "core/compare/comparison.h"

#include <stdexcept>
#include <string>

namespace test {

/// The row of this nutrient. Throws when the comparison has none.
[[nodiscard]] inline core::Row row_of(const core::Comparison& comparison, core::Nutrient nutrient)
{
    for (const auto& row : comparison.rows)
        if (row.nutrient == nutrient)
            return row;
    throw std::logic_error("no row for " + std::string(core::info(nutrient).key));
}

/// The same comparison with the two sides exchanged.
[[nodiscard]] inline core::Comparison swapped(core::Comparison comparison)
{
    std::swap(comparison.left_inconsistent, comparison.right_inconsistent);
    std::swap(comparison.left_times, comparison.right_times);
    for (auto& row : comparison.rows) {
        std::swap(row.left, row.right);
        if (row.finding == core::Finding::LeftLess)
            row.finding = core::Finding::LeftMore;
        else if (row.finding == core::Finding::LeftMore)
            row.finding = core::Finding::LeftLess;
    }
    return comparison;
}

} // namespace test
