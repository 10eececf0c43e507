// Signs that are no letters, for the voice: those with a word, those that are a pause, those that nobody says.
#pragma once

#include "ui/words/language.h"

#include <string>
#include <string_view>

namespace ui {

/// The words with every such sign replaced by a word, a pause or a blank; fractions of one sign become "1/2".
[[nodiscard]] std::string without_signs(std::string_view words, const Language& language);

/// One blank between words, none before a pause, one pause at a place.
[[nodiscard]] std::string tidy(std::string_view words);

} // namespace ui
