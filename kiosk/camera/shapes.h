// The shapes of printed digits as a lens leaves them: what a piece of grey is compared with.
// Source of the bars: ISO/IEC 15420 (EAN/UPC), number sets A, B and C; GS1 General Specifications, section 5.2.1.
#pragma once

#include <array>
#include <cstddef>

namespace kiosk {

/// Grey values to a module, and to a digit of seven modules.
constexpr int values_in_module = 4;
constexpr int values_in_digit = 7 * values_in_module;

/// Twenty shapes of one half of a code, side by side: 0 to 9 of number set A (or C), then 0 to 9 of set B. `at[i][s]`
/// is value i of shape s. Each shape has mean 0 and length 1, ink is positive. Right halves have no set B: their ten
/// last are empty.
struct Shapes {
    std::array<std::array<float, 20>, values_in_digit> at{};
};

/// What is no digit: the beginning with three modules of light margin and the first of a digit, the middle with one of
/// each half, the end as the beginning. Seven modules each, as a digit.
enum class Guard { Begin, Middle, End };

/// A guard's shape, as those of digits.
[[nodiscard]] const std::array<float, values_in_digit>& shape_of(Guard guard, std::size_t spread);

/// How far a lens spreads an edge: standard deviations in modules, from sharp to hardly readable.
constexpr std::array<double, 5> spreads{0.25, 0.42, 0.6, 0.8, 1.0};

/// Shapes of the left half (sets A and B) or the right half (set C) for one of the spreads.
[[nodiscard]] const Shapes& shapes_of(bool right_half, std::size_t spread);

} // namespace kiosk
