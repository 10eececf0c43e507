// One language: its fixed texts from a .po file (GNU gettext format), checked when it is loaded.
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

/// All fixed texts in one language; complete by construction: in a draft, English stands where it has no text yet.
class Language {
public:
    /// Reads the text of a .po file. `code` is its language ("en", "es"), `source` its name for errors.
    /// Errors: BadValue (not .po, a text twice, a name nobody knows, a broken placeholder, text that is not in Unicode
    /// normalization form C, a draft), MissingValue (a text is not translated). The row is that of the msgid.
    [[nodiscard]] static core::Result<Language> parse(std::string_view po, std::string_view code,
                                                      std::string_view source);

    /// The same for a translation: each text must have the placeholders of the English one (BadValue with those of the
    /// English text in `place.expected`). A file whose header has the line `X-Pairstand-State: draft` may lack texts.
    [[nodiscard]] static core::Result<Language> parse(std::string_view po, std::string_view code,
                                                      std::string_view source, const Language& english);

    [[nodiscard]] const std::string& code() const { return code_; }
    /// Whether it is a draft that nobody answers for yet: not for shoppers.
    [[nodiscard]] bool is_draft() const { return draft_; }
    /// The text as it stands, placeholders included.
    [[nodiscard]] const std::string& text(TextId id) const { return texts_[static_cast<std::size_t>(id)]; }
    /// The text with its placeholders filled.
    [[nodiscard]] std::string fill(TextId id, std::initializer_list<Fill> fills) const;

private:
    Language() = default;
    static core::Result<Language> read(std::string_view po, std::string_view code, std::string_view source,
                                       const Language* english);
    std::string code_;
    bool draft_ = false;
    std::vector<std::string> texts_;
};

/// Whether a text in UTF-8 is in Unicode normalization form C (NFC): accents in one with their letters, which is how
/// fonts have them. Source: Unicode Standard Annex 15.
[[nodiscard]] bool is_composed(std::string_view text);

/// The names between braces in a text, in order: "{n} of {all}" has n and all.
[[nodiscard]] std::vector<std::string> placeholders(std::string_view text);

} // namespace ui
