// One label laid flat for the audit: the ranges behind its figures in arrays, read once. Nothing here allocates.
#pragma once

#include "core/figure/wide.h"
#include "core/product.h"

#include <array>
#include <cstdint>
#include <optional>

namespace core::audited {

/// A set of nutrients as bits: one test tells whether a line is there.
using Lines = std::uint64_t;
[[nodiscard]] constexpr Lines bit(Nutrient nutrient)
{
    return Lines{1} << static_cast<unsigned>(nutrient);
}
static_assert(nutrient_count <= 64);

/// Billionths of a gram or calorie, from low to high, both included: ranges of one label may touch where a half went
/// down on one line and up on the other.
struct Reach {
    std::int64_t low = 0;
    std::int64_t high = 0;
};

/// What the audit knows of a product.
struct Facts {
    const Product& product;
    Lines amounts = 0;      ///< lines with a printed amount
    Lines off_grid = 0;     ///< of these: those that the rule never prints and that were not worked back
    Lines known = 0;        ///< lines whose content is known, "not a significant source of" included
    Lines contradicted = 0; ///< amount and percent exclude each other
    Lines percent_off = 0;  ///< a percent that the rule never prints
    int agreeing = 0;       ///< lines whose amount and percent agree
    std::array<Reach, nutrient_count> reach; ///< only where `known`
    std::array<const Line*, nutrient_count> line;
    Reach serving{}; ///< of the metric serving size
    bool has_serving = false;
    bool volume = false; ///< millilitres

    [[nodiscard]] bool has(Nutrient nutrient) const { return (amounts & bit(nutrient)) != 0; }
    [[nodiscard]] bool knows(Nutrient nutrient) const { return (known & bit(nutrient)) != 0; }
    [[nodiscard]] const Reach& of(Nutrient nutrient) const { return reach[static_cast<std::size_t>(nutrient)]; }
    [[nodiscard]] const Line& line_of(Nutrient nutrient) const { return *line[static_cast<std::size_t>(nutrient)]; }
    /// What this line adds: nothing where it is not printed.
    [[nodiscard]] Reach or_nothing(Nutrient nutrient) const { return knows(nutrient) ? of(nutrient) : Reach{}; }
};

/// Reads a label. The product must outlive what is returned.
[[nodiscard]] Facts facts_of(const Product& product);

/// Whether amount and percent of a line can both be right by these Daily Values. True where no percent is counted.
[[nodiscard]] bool percent_fits(Nutrient nutrient, const Line& line, Panel panel, Audience audience);

/// The Daily Value in billionths; 0: none. The same as core::daily_value, at once.
[[nodiscard]] std::int64_t daily_nano(Nutrient nutrient, Panel panel, Audience audience);

} // namespace core::audited
