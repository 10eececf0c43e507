// The checkout as the house checks see it: every text file by its path from the top, read once.
#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace test::house {

/// Files by path from the top ("core/error.h"), with their whole text.
using Tree = std::map<std::string, std::string>;

/// What is wrong, one sentence each, beginning with the place: "core/error.h:3: ...".
using Complaints = std::vector<std::string>;

/// Reads a checkout: all but `.git`, folders named `build...` at the top, and pictures.
[[nodiscard]] Tree read_tree(const std::filesystem::path& root);

/// The names directly below the top, folders with a trailing `/`; without build folders and `.git`.
[[nodiscard]] std::vector<std::string> top_level(const std::filesystem::path& root);

/// The lines of a text, without their line ends.
[[nodiscard]] std::vector<std::string_view> lines_of(std::string_view text);

/// The first folder of a path ("core" of "core/error.h"), empty for a file at the top.
[[nodiscard]] std::string_view room_of(std::string_view path);

/// "path:line: what": how every complaint is written.
[[nodiscard]] std::string complaint(std::string_view path, std::size_t line, std::string_view what);

/// The code of a C++ file with comments and the insides of literals as blanks; lines and columns stay as they are.
[[nodiscard]] std::string bare_code(std::string_view text);

} // namespace test::house
