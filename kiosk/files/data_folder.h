// Where the program's own data lies: languages and the demo sheet.
#pragma once

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace kiosk {

/// Asks for a variable of the environment; nothing when it is not set or empty. Tests pass their own.
using Environment = std::function<std::optional<std::string>(const std::string& name)>;

/// The environment of this process.
[[nodiscard]] std::optional<std::string> process_environment(const std::string& name);

/// Where data may lie, the first choice first: $PAIRSTAND_DATA alone when that is set; else ../share/pairstand seen
/// from the program (installed), then the folder that it was built from.
[[nodiscard]] std::vector<std::filesystem::path> data_folders(const Environment& environment,
                                                              const std::filesystem::path& program);

/// The first of these that has language files. Throws std::runtime_error with one sentence when none has.
[[nodiscard]] std::filesystem::path data_folder(const Environment& environment = process_environment);

/// The whole file. Throws std::runtime_error when it cannot be read.
[[nodiscard]] std::string read_file(const std::filesystem::path& path);

} // namespace kiosk
