// What one picture says of the code in it: the code, or what speaks for each of its digits.
#pragma once

#include "kiosk/camera/digit_fit.h"
#include "kiosk/camera/reader.h"

#include <optional>

namespace kiosk {

/// Bars into which the shapes of digits fit well, and yet no code is sure: one of several, or none that is right.
struct Unsure {
    const Layout* layout = nullptr;
    Fit fit{};
};

/// One or the other, or neither.
struct Look {
    std::optional<Reading> reading{};
    std::optional<Unsure> unsure{};
};

/// As read() in reader.h, and says more where nothing is sure. Of several codes in the picture the nearest to its
/// middle counts: what is held up to a camera is held there.
[[nodiscard]] Look look_at(const GreyView& picture);

} // namespace kiosk
