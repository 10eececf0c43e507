// Turns a grey picture by quarters and swaps its left and right, while it is copied anyway.
#pragma once

#include "kiosk/camera/frame.h"

namespace kiosk {

/// How a picture is put right: first left and right are swapped, then it is turned.
struct Turn {
    int quarters = 0; ///< clockwise
    bool swap = false;
    bool operator==(const Turn&) const = default;
};

/// A copy of the picture, put right, with rows that touch; without time and number.
[[nodiscard]] Frame turned(const GreyView& picture, Turn turn);

} // namespace kiosk
