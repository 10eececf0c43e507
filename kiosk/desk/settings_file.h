// Where station.conf lies, how it is read, and what is said of a line that cannot be taken.
#pragma once

#include "kiosk/desk/settings.h"
#include "kiosk/files/data_folder.h"
#include "ui/words/language.h"

#include <cstddef>
#include <filesystem>
#include <string>
#include <vector>

namespace kiosk {

/// `given` (of --settings) when it is not empty, else $PAIRSTAND_SETTINGS, else pairstand/station.conf in the user's
/// folder of settings ($XDG_CONFIG_HOME, usually ~/.config) when it is there, else an empty path: the defaults.
[[nodiscard]] std::filesystem::path settings_place(const std::string& given,
                                                   const Environment& environment = process_environment);

/// Reads the file there; the defaults for an empty path. A file that cannot be read is a fault: NoSuchFile, IsFolder or
/// CannotRead.
[[nodiscard]] SettingsRead read_settings_file(const std::filesystem::path& file);

/// One sentence for each fault: file, line, key, what was found and what was expected.
[[nodiscard]] std::vector<std::string> settings_trouble(const SettingsRead& read, const ui::Language& language);

/// The numbers of the lines that could not be taken, in order; none where the file itself could not be read.
[[nodiscard]] std::vector<std::size_t> lines_with_faults(const SettingsRead& read);

} // namespace kiosk
