// The product's number in a code that says more than digits: an element string, with brackets or without, or a link.
// Source: GS1 General Specifications, sections 3.2 (application identifiers) and 7.8 (element strings).
#pragma once

#include "core/code/gtin.h"

#include <string_view>

namespace core {

/// FNC1 as readers hand it on (GS, ASCII 29). Between two elements it ends the first; in front of all of them it means
/// that the reader vouches for an element string.
inline constexpr char element_separator = '\x1d';

/// The number behind (01). Taken are "0109521234543213..." and "(01)09521234543213...", and with a separator in front
/// elements in any order. All of the text must be elements: a text that only begins like some is none.
/// Errors: NotAProductCode (no elements, none of them (01), two numbers that differ, or (02): what is in a case);
/// NotDigits or WrongCheckDigit of the number itself.
[[nodiscard]] Result<Gtin> read_elements(std::string_view text);

/// The number in an element string or in a link (core/code/digital_link.h). Plain digits of a GTIN are neither.
/// Errors: those of the two.
[[nodiscard]] Result<Gtin> gtin_within(std::string_view text);

} // namespace core
