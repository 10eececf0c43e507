// An error as one sentence: where, what was found, what was expected or what to do.
#pragma once

#include "core/error.h"
#include "ui/words/language.h"

#include <string>

namespace ui {

/// One sentence for people, with its full stop: `sheet.csv, row 7, column sodium_mg: found "12x", expected ...`.
/// The same on the desk screen and on the error output of every command. What was expected of a cell is English in
/// every language, as the names of the columns are.
[[nodiscard]] std::string sentence(const core::Error& error, const Language& language);

/// The same for a line of a file of settings: `station.conf, line 3, aims: found "clas", expected ...`.
[[nodiscard]] std::string settings_sentence(const core::Error& error, const Language& language);

} // namespace ui
