// What a scanner sent as text, made into a scan, and whether a product's number stands in it.
#pragma once

#include "kiosk/clock.h"
#include "kiosk/input/scan.h"

#include <string>
#include <string_view>

namespace kiosk {

/// The text as a scan: an identifier (kiosk/input/aim.h) is taken off.
[[nodiscard]] Scan scan_of(const std::string& text, TimePoint when);

/// Whether the scan holds a number with a right check digit: digits, an element string or a link.
[[nodiscard]] bool holds_number(const Scan& scan);

} // namespace kiosk
