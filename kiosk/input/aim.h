// The three characters that a scanner may put before a code to say which bars it read ("]E0"): AIM symbology
// identifiers. Source: ISO/IEC 15424, as listed in GS1 General Specifications, section on symbology identifiers.
#pragma once

#include "core/code/symbology.h"

#include <optional>
#include <string>
#include <string_view>

namespace kiosk {

/// What stands behind an identifier, and what the identifier says of it.
struct Identified {
    std::string text;
    core::Symbology symbology = core::Symbology::Unknown;
    bool operator==(const Identified&) const = default;
};

/// Takes the identifier off; nothing where none is. Bars that carry product numbers, with data as long as the standard
/// says, get their symbology; everything else is Other. Of "]E3" the add-on behind the 13 digits is cut off.
/// Identifiers of element strings (GS1-128, GS1 DataBar, GS1 DataMatrix, GS1 QR Code, GS1 DotCode) leave
/// `core::element_separator` in front of the text, which says the same to core/code/element_string.h.
/// "]E0" is 13 digits whether the package shows an EAN-13, a UPC-A or a UPC-E: scanners fill all of them up.
[[nodiscard]] std::optional<Identified> identify(std::string_view typed);

} // namespace kiosk
