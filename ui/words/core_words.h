// What core and catalog name in English (what was found or expected, where a rule stands), in the chosen language.
#pragma once

#include "ui/words/language.h"

#include <span>
#include <string>
#include <string_view>

namespace ui {

/// A phrase of core or catalog, with placeholders for what changes in it.
struct CorePhrase {
    TextId id;
    std::string_view english;
};

/// All that are known.
[[nodiscard]] std::span<const CorePhrase> core_phrases();

/// A phrase of core or catalog in this language: "12 cells" is "12 celdas". Lists of keys ("oz, lb or kg") are known by
/// their form. What is no such phrase (a cell, a key, the name of a publication) stays as it is.
[[nodiscard]] std::string core_words(std::string_view english, const Language& language);

} // namespace ui
