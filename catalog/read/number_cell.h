// Points and commas in numbers: what is read, and what is refused because it could be read in two ways.
#pragma once

#include "core/error.h"

#include <string>
#include <string_view>

namespace catalog {

/// The cell with a decimal point in each number. `comma_is_decimal` says that the sheet may write "0,5", which only one
/// with another separator than the comma does.
/// Errors: BadValue, with what was expected in `place.expected`, for "1,500" and "1.500" in every sheet (a thousand and
/// a half, or one and a half), for two signs in one number, and for a comma where it is no decimal sign.
[[nodiscard]] core::Result<std::string> with_decimal_points(std::string_view cell, bool comma_is_decimal);

} // namespace catalog
