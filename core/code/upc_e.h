// UPC-E, the short form of a UPC-A with zeros left out. Source: GS1 General Specifications, section 5.2.2.4.2.
#pragma once

#include "core/error.h"

#include <string>
#include <string_view>

namespace core {

/// Expands eight digits (number system 0 or 1, six digits, check digit) to the twelve of the UPC-A.
/// Errors: NotDigits, WrongLength (not 8), NotAProductCode (number system other than 0 or 1), WrongCheckDigit.
/// Forms that no printer may make are expanded all the same: a reader has no better answer.
[[nodiscard]] Result<std::string> expand_upc_e(std::string_view eight);

/// The six middle digits, when the twelve of a UPC-A can be shortened; NotAProductCode when they cannot.
[[nodiscard]] Result<std::string> shorten_to_upc_e(std::string_view twelve);

/// Whether a printer may make these six middle digits; the others stand for a number that another form holds.
[[nodiscard]] bool is_printable_upc_e(std::string_view six);

} // namespace core
