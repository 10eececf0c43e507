// An error as one sentence: where, what was found, what was expected.
#pragma once

#include "core/error.h"

#include <string>

namespace ui {

/// One sentence for people, with its full stop: `sheet.csv, row 7, column sodium_mg: found "12x", expected ...`.
/// The same on the desk screen and on the error output of every command.
[[nodiscard]] std::string sentence(const core::Error& error);

} // namespace ui
