// A tiny copy of a camera's picture, by which two pictures are compared for almost nothing.
#pragma once

#include "kiosk/camera/frame.h"

#include <array>
#include <cstdint>

namespace kiosk {

/// 32 x 18 cells, each the mean grey of a part of the picture; rows from top to bottom.
struct Thumb {
    static constexpr int columns = 32;
    static constexpr int rows = 18;
    std::array<std::uint8_t, std::size_t{columns} * rows> cells{};
    bool operator==(const Thumb&) const = default;
};

/// The copy. Looks at 64 points of each cell, so that grain goes and a large picture costs no more than a small one.
/// A picture with less than one pixel a cell gives an empty one.
[[nodiscard]] Thumb thumb_of(const GreyView& picture);

/// How many cells look different. A light that changes everywhere alike does not count.
[[nodiscard]] int cells_changed(const Thumb& before, const Thumb& after);

/// Whether it shows nothing but black, as behind a cap over the lens. Grey levels up to 40: a dark room with anything
/// bright in it is not black (common practice; cameras send black as 16).
[[nodiscard]] bool is_black(const Thumb& thumb);

} // namespace kiosk
