// Sugars in teaspoons, as classes count them: 4 g a teaspoon (common practice; weighed, a teaspoon of sugar is 4.2 g).
#pragma once

#include "core/figure/amount.h"

#include <cstdint>

namespace core {

/// Grams of sugar that a class counts as one teaspoon.
inline constexpr std::int64_t grams_in_teaspoon = 4;

/// Sugars in quarters of a teaspoon, to the nearest, halves up. Exact: a quarter of a teaspoon is one gram.
[[nodiscard]] constexpr std::int64_t quarter_teaspoons(Content sugars)
{
    constexpr std::int64_t quarter = grams_in_teaspoon * 1'000'000'000 / 4;
    return (sugars.nano() + quarter / 2) / quarter;
}

} // namespace core
