// The languages that this station speaks, from its language files.
#pragma once

#include "ui/words/language.h"

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace kiosk {

/// Reads every languages/*.po of the data folder: English first, the others by their code.
/// Throws std::runtime_error naming file and place when one is broken: it is part of the program.
[[nodiscard]] std::vector<ui::Language> read_languages(const std::filesystem::path& data_folder);

/// The one with this code. Throws std::invalid_argument with a sentence that names those there are.
[[nodiscard]] const ui::Language& language_named(std::string_view code, const std::vector<ui::Language>& languages);

/// The codes of the language files, "en, es", without reading them: for help. Empty when the folder cannot be read.
[[nodiscard]] std::string language_codes(const std::filesystem::path& data_folder);

} // namespace kiosk
