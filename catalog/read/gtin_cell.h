// A product number as a sheet holds it, with a sentence of its own for everything that spreadsheets do to numbers.
#pragma once

#include "core/code/gtin.h"
#include "core/error.h"

#include <string_view>

namespace catalog {

/// The product number in a tidy cell. Errors, with what was expected in `place.expected`: BadValue (shortened to
/// "9.52E+12" by a spreadsheet), NotDigits, WrongLength (zeros lost in front are told), WrongCheckDigit,
/// NotAProductCode (a store's own number, a coupon, a case, ...).
[[nodiscard]] core::Result<core::Gtin> read_gtin(std::string_view cell);

/// The same for a label of this place only: a number that a store gives itself (core/code/store_code.h). A number that
/// names a product everywhere is NotAProductCode here.
[[nodiscard]] core::Result<core::Gtin> read_own_number(std::string_view cell);

} // namespace catalog
