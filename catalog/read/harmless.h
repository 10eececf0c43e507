// Text that a spreadsheet would run as a formula, or take for a number or a day, with an apostrophe in front; and back.
// Source: OWASP, CSV Injection (which signs begin a formula, and that separators inside of a cell may begin one too).
#pragma once

#include <string>
#include <string_view>

namespace catalog {

/// The cell with an apostrophe before each place where a formula could begin ("=", "+", "-", "@", a tab or a line end,
/// at the beginning or behind a separator) and before a text of digits and signs only, of which a spreadsheet would
/// make a number or a day ("012345000065", "1/2"). "=1+1" becomes "'=1+1"; most text stays as it is.
[[nodiscard]] std::string made_harmless(std::string_view text);

/// The text behind a harmless cell: always the one that `made_harmless` was given.
[[nodiscard]] std::string as_meant(std::string_view cell);

} // namespace catalog
