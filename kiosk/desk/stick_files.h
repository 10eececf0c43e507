// What lies on the sticks that the desk can take: found by name and first bytes, to a bounded depth, links passed over.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <string>
#include <vector>

namespace kiosk {

/// One thing that can be loaded or installed.
struct StickFile {
    enum class Kind { Sheet, Release, Bundle };
    Kind kind = Kind::Sheet;
    std::filesystem::path path;
    std::filesystem::path stick; ///< the folder under which it was found
    std::uint64_t bytes = 0;     ///< of a folder: of the files in it that are read
    std::string day;             ///< when it was last written, "2026-11-26"; as the stick tells it
    bool operator==(const StickFile&) const = default;
};

/// What was found.
struct StickFiles {
    std::vector<StickFile> files;              ///< the newest day first, then by name
    std::size_t sticks = 0;                    ///< how many there are
    bool all = true;                           ///< whether everything was looked at
    std::vector<std::filesystem::path> locked; ///< folders that may not be read
};

/// How much of a stick is looked at.
inline constexpr int deepest_folder = 3;             ///< folders within folders
inline constexpr std::size_t most_entries = 5'000;   ///< of one stick
inline constexpr std::size_t most_stick_files = 200; ///< of all sticks; more nobody leafs through

/// The folders where Debian mounts sticks, as they are now: /media/*/*, /run/media/*/* and /mnt/*, each that is a
/// mount of its own.
[[nodiscard]] std::vector<std::filesystem::path> mounted_sticks();

/// Looks through these folders. `go_on` is asked now and then; false ends the search.
[[nodiscard]] StickFiles find_on_sticks(const std::vector<std::filesystem::path>& sticks,
                                        const std::function<bool()>& go_on);

/// Whether the stick that a file was on is still there.
[[nodiscard]] bool is_there(const StickFile& file);

} // namespace kiosk
