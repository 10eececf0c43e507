// Reads the part of the .po format that our language files use. Source: GNU gettext manual, "The Format of PO Files".
#pragma once

#include "core/error.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace ui {

/// One message: its key, its translation, and the line of its msgid (from 1).
struct PoMessage {
    std::string id;
    std::string text;
    std::size_t line = 0;
    bool operator==(const PoMessage&) const = default;
};

/// A whole file: its header (the text of the empty id, one field a line) and all other messages in order.
struct PoFile {
    std::string header;
    std::vector<PoMessage> messages;
};

/// All messages in order, the header (empty id) left out. Contexts and plurals are refused: our keys need neither.
/// Messages marked fuzzy are passed over, and so is every comment, obsolete messages (#~) among them. What is read is
/// what msgfmt reads, and what msgfmt refuses outside of comments is refused. Errors: BadValue with the line in
/// `place.row`.
[[nodiscard]] core::Result<std::vector<PoMessage>> parse_po(std::string_view text, std::string_view source);

/// The same with the header, which is read even where it is marked fuzzy, as msginit leaves it.
[[nodiscard]] core::Result<PoFile> parse_po_file(std::string_view text, std::string_view source);

/// What stands behind "NAME: " in a header, blanks around it taken off; empty where no line begins so.
[[nodiscard]] std::string po_header_field(std::string_view header, std::string_view name);

} // namespace ui
