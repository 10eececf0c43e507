// The languages that this station speaks, from its language files.
#pragma once

#include "ui/words/language.h"

#include <filesystem>
#include <vector>

namespace kiosk {

/// Reads every languages/*.po of the data folder: English first, the others by their code.
/// Throws std::runtime_error naming file and place when one is broken: it is part of the program.
[[nodiscard]] std::vector<ui::Language> read_languages(const std::filesystem::path& data_folder);

} // namespace kiosk
