// Serving size and net quantity as a release writes them: codes of the trade standard (GRM, ONZ, OZA), 32-bit floats
// printed in full, several sizes in one cell. Sources: FoodData Central, Branded Foods (field descriptions of April
// 2019); UN/ECE Recommendation 20 (unit codes).
#pragma once

#include "core/label/label.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace catalog {

/// A serving size.
struct ReleaseServing {
    std::int64_t micro = 0; ///< millionths of a gram or millilitre: what amounts per 100 are counted with; 0: none
    enum class Unit {
        Told,    ///< written beside it
        Guessed, ///< it said MG, IU or nothing: taken from the net quantity, grams where that tells nothing
        Unknown, ///< said nothing, and nothing tells: the figures stand, the size is not shown
    };
    Unit unit_from = Unit::Told;
    std::optional<core::Measure> metric;
};

/// Reads serving_size and serving_size_unit; `net` is the package's net quantity, where it could be read.
[[nodiscard]] ReleaseServing read_release_serving(std::string_view size, std::string_view unit,
                                                  const std::optional<core::NetQuantity>& net);

/// "1 ONZ" as "1 oz", "8 OZA" as "8 fl oz"; "Amount per serving", "null" and the like as nothing.
[[nodiscard]] std::string read_release_household(std::string_view text);

/// "12 oz/340 g": printed "12 oz (340 g)", metric 340 g. Nothing for an empty cell.
[[nodiscard]] std::optional<core::NetQuantity> read_release_net(std::string_view text);

} // namespace catalog
