// An error as one sentence: where, what was found, what was expected or what to do.
#pragma once

#include "core/error.h"
#include "ui/words/language.h"

#include <string>

namespace ui {

/// One sentence for people, with its full stop: `sheet.csv, row 7, column sodium_mg: found "12x", expected ...`.
/// The same on the desk screen and on the error output of every command. The names of columns and the words that a cell
/// takes are as they must be typed, and what the system says is in the system's language.
[[nodiscard]] std::string sentence(const core::Error& error, const Language& language);

/// The same for a line of a file of settings: `station.conf, line 3, aims: found "clas", expected ...`.
[[nodiscard]] std::string settings_sentence(const core::Error& error, const Language& language);

} // namespace ui
