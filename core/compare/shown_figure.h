// How a printed figure is shown on another basis: the taught product or quotient, its percent, and when to say more.
#pragma once

#include "core/compare/comparison.h"
#include "core/compare/factor.h"

#include <optional>

namespace core {

/// What is to be shown on a basis: the line it comes from and what is known behind it.
struct ServingLine {
    const Label& label;
    Nutrient nutrient;
    Basis basis;
    std::optional<Content> nominal;
    std::optional<Range<Content>> content; ///< of one serving
};

/// Whether a basis is an amount that people eat, so that the taught product and the 5/20 guide are read on it (the
/// guide itself speaks of one serving); equal amounts are only held against each other.
[[nodiscard]] bool is_eaten(Basis basis);

/// Turns what one serving shows into what the basis shows. Of a whole package and of my amount the percent is the
/// taught product (printed percent times servings) and is read by the guide; of equal amounts it is counted from the
/// amount, and nothing is read.
void scale_shown(Shown& shown, const ServingLine& from, const Factor& factor);

} // namespace core
