// The languages that this station speaks, from its language files.
#pragma once

#include "ui/words/language.h"

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace kiosk {

/// What the language files hold.
struct LanguageFiles {
    std::vector<ui::Language> languages; ///< English first, then the others by their code, then drafts by theirs
    /// A file that cannot be used.
    struct Refused {
        std::string code;
        std::string sentence; ///< which file, where in it, what is wrong and what to do; with its full stop
    };
    std::vector<Refused> refused; ///< by their code
};

/// Reads every languages/*.po of the data folder. A file that is broken is left out and told, because people go on
/// needing the others. Throws std::runtime_error naming file and place when English is broken: it is part of the
/// program, and all others are checked against it.
[[nodiscard]] LanguageFiles read_language_files(const std::filesystem::path& data_folder);

/// Those of them that are whole, without drafts. Throws as read_language_files.
[[nodiscard]] std::vector<ui::Language> read_languages(const std::filesystem::path& data_folder);

/// The language of a command that asked for `code`. Throws std::invalid_argument with a sentence that says what is
/// wrong with its file, that it is a draft, or which there are.
[[nodiscard]] const ui::Language& language_named(std::string_view code, const LanguageFiles& files);

/// The language that a station begins with which was opened with `code`: English where that file is broken, because a
/// station that nobody watches has to open. Throws as language_named for a draft and for one that is not there.
[[nodiscard]] const ui::Language& first_language(std::string_view code, const LanguageFiles& files);

/// The one with this code. Throws std::invalid_argument with a sentence that names those there are.
[[nodiscard]] const ui::Language& language_named(std::string_view code, const std::vector<ui::Language>& languages);

/// The codes of the language files, "en, es", without checking them and without drafts: for help. Empty when the folder
/// cannot be read.
[[nodiscard]] std::string language_codes(const std::filesystem::path& data_folder);

} // namespace kiosk
