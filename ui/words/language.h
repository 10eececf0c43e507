// One language: its fixed texts from a .po file (GNU gettext format), checked for gaps when it is loaded.
#pragma once

#include "core/error.h"
#include "ui/words/text.h"

#include <initializer_list>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace ui {

/// A placeholder's name and what stands in its place: {"name", "Oat rounds"} for "{name}".
using Fill = std::pair<std::string_view, std::string_view>;

/// All fixed texts in one language; complete by construction.
class Language {
public:
    /// Reads the text of a .po file. `code` is its language ("en", "es"), `source` its name for errors.
    /// Errors: BadValue (not .po, a text twice, a name nobody knows), MissingValue (a text is not translated).
    [[nodiscard]] static core::Result<Language> parse(std::string_view po, std::string_view code,
                                                      std::string_view source);

    [[nodiscard]] const std::string& code() const { return code_; }
    /// The text as it stands, placeholders included.
    [[nodiscard]] const std::string& text(TextId id) const { return texts_[static_cast<std::size_t>(id)]; }
    /// The text with its placeholders filled.
    [[nodiscard]] std::string fill(TextId id, std::initializer_list<Fill> fills) const;

private:
    Language() = default;
    std::string code_;
    std::vector<std::string> texts_;
};

/// The names between braces in a text, in order: "{n} of {all}" has n and all.
[[nodiscard]] std::vector<std::string> placeholders(std::string_view text);

} // namespace ui
