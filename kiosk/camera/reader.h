// From a grey picture to the product code in it: the one door, for live frames and for pictures in files.
#pragma once

#include "core/code/symbology.h"
#include "kiosk/camera/frame.h"

#include <optional>
#include <string>

namespace kiosk {

/// A code with a right check digit. `text` is what the bars hold: 13 digits for EAN-13, 12 for UPC-A, 8 for EAN-8 and
/// UPC-E (not expanded), 14 for ITF-14.
struct Reading {
    std::string text;
    core::Symbology symbology = core::Symbology::Unknown;
    bool operator==(const Reading&) const = default;
};

/// The code in the picture, or nothing. With several codes in it, the nearest to its middle. Any picture at all is safe
/// to give.
[[nodiscard]] std::optional<Reading> read(const GreyView& picture);

} // namespace kiosk
