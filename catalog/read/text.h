// Bytes of a spreadsheet program to text: which encoding they are in, and which signs a cell may hold.
// Source: the Unicode Standard, section 23.8 (byte order mark), annex 15 (NFC); Windows-1252 as the WHATWG Encoding
// Standard maps it.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace catalog {

/// What stands in for bytes that are no letter: U+FFFD.
constexpr std::string_view unreadable = "\xEF\xBF\xBD";

/// The same text in UTF-8, without byte order mark. Takes UTF-8 and UTF-16 with their marks; without one UTF-8, and
/// Windows-1252 where no letter of the bytes above 127 is UTF-8. Bytes that are no letter become U+FFFD. Line ends of
/// all kinds become "\n".
[[nodiscard]] std::string to_utf8(std::string_view bytes);

/// A cell as it is kept: letters in one form (NFC), all white space as single blanks, none at the ends, no soft hyphens
/// and other signs without width. Nothing for a cell with a control character, an unreadable letter or a sign that
/// no font of this world has a picture for.
[[nodiscard]] std::optional<std::string> tidy(std::string_view cell);

/// A refused cell as it can be shown: tidy, but with U+FFFD for every sign that `tidy` refuses.
[[nodiscard]] std::string shown(std::string_view cell);

/// How many letters a text in UTF-8 has.
[[nodiscard]] std::size_t letters_in(std::string_view utf8);

} // namespace catalog
