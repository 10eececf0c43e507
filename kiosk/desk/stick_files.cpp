#include "kiosk/desk/stick_files.h"

#include "catalog/read/release_files.h"
#include "kiosk/desk/today.h"

#include <algorithm>
#include <cctype>
#include <chrono>
#include <optional>
#include <sys/stat.h>
#include <tuple>

namespace kiosk {
namespace {

namespace fs = std::filesystem;

/// Calls `take` for what lies in a folder; links are passed over. False when `take` wants no more; `error` says whether
/// the folder could be read.
template<class Take>
bool each_in(const fs::path& folder, std::error_code& error, Take take)
{
    for (fs::directory_iterator entry(folder, error), end; !error && entry != end; entry.increment(error)) {
        std::error_code unknown;
        if (!entry->is_symlink(unknown) && !take(*entry))
            return false;
    }
    return true;
}

/// A folder that no stick is mounted on lies on the same device as the one above it.
bool is_mount(const fs::path& folder)
{
    struct stat here {};
    struct stat above {};
    return ::stat(folder.c_str(), &here) == 0 && ::stat(folder.parent_path().c_str(), &above) == 0 &&
           here.st_dev != above.st_dev;
}

void add_mounts(const fs::path& folder, int depth, std::vector<fs::path>& sticks)
{
    std::error_code locked; // another's: none of this station's sticks
    each_in(folder, locked, [&](const fs::directory_entry& entry) {
        std::error_code unknown;
        if (!entry.is_directory(unknown))
            return true;
        if (depth > 1)
            add_mounts(entry.path(), depth - 1, sticks);
        else if (is_mount(entry.path()))
            sticks.push_back(entry.path());
        return true;
    });
}

std::string day_of(const fs::path& path)
{
    struct stat found {};
    return ::stat(path.c_str(), &found) == 0 ? words_of_day(found.st_mtim.tv_sec) : std::string();
}

std::string small_extension(const fs::path& path)
{
    std::string extension = path.extension().string();
    std::ranges::transform(extension, extension.begin(), [](unsigned char c) { return std::tolower(c); });
    return extension;
}

/// What a file is by its name; a zip or JSON file is looked into.
std::optional<StickFile::Kind> kind_of(const fs::path& path)
{
    const auto extension = small_extension(path);
    if (extension == ".csv" || extension == ".xlsx" || extension == ".ods")
        return StickFile::Kind::Sheet;
    if (extension == ".bundle")
        return StickFile::Kind::Bundle;
    if ((extension == ".zip" || extension == ".json") && catalog::is_release(path))
        return StickFile::Kind::Release;
    return std::nullopt;
}

/// A part of a release is one too: looking into it tells what is missing. "food.csv" alone may be anybody's sheet.
bool holds_release(const fs::path& folder)
{
    std::error_code unknown;
    for (const char* name : {"branded_food.csv", "food_nutrient.csv"})
        if (fs::is_regular_file(fs::symlink_status(folder / name, unknown)))
            return true;
    return false;
}

/// One search.
class Search {
public:
    explicit Search(const std::function<bool()>& go_on) : go_on_(go_on) {}

    void stick(const fs::path& folder)
    {
        stick_ = folder;
        entries_ = 0;
        look_into(folder, 1);
    }
    StickFiles found()
    {
        std::ranges::sort(found_.files, [](const StickFile& a, const StickFile& b) {
            return std::tie(b.day, a.path) < std::tie(a.day, b.path);
        });
        return std::move(found_);
    }

private:
    void look_into(const fs::path& folder, int depth)
    {
        if (holds_release(folder)) {
            add(StickFile::Kind::Release, folder, release_bytes(folder));
            return;
        }
        std::error_code error;
        const bool whole = each_in(folder, error, [&](const fs::directory_entry& entry) {
            if (++entries_ > most_entries || found_.files.size() >= most_stick_files || (go_on_ && !go_on_()))
                return false;
            look_at(entry, depth);
            return true;
        });
        found_.all = found_.all && whole;
        if (error == std::errc::permission_denied)
            found_.locked.push_back(folder);
    }

    void look_at(const fs::directory_entry& entry, int depth)
    {
        std::error_code error;
        if (entry.path().filename().string().starts_with('.')) // what systems leave on sticks
            return;
        if (entry.is_directory(error)) {
            if (depth < deepest_folder)
                look_into(entry.path(), depth + 1);
            else
                found_.all = false;
        } else if (entry.is_regular_file(error))
            if (const auto kind = kind_of(entry.path())) {
                const auto bytes = entry.file_size(error);
                add(*kind, entry.path(), error ? 0 : bytes);
            }
    }

    static std::uint64_t release_bytes(const fs::path& folder)
    {
        std::uint64_t bytes = 0;
        for (const char* name : {"branded_food.csv", "food.csv", "food_nutrient.csv"}) {
            std::error_code missing;
            const auto size = fs::file_size(folder / name, missing);
            bytes += missing ? 0 : size;
        }
        return bytes;
    }

    void add(StickFile::Kind kind, const fs::path& path, std::uint64_t bytes)
    {
        found_.files.push_back({kind, path, stick_, bytes, day_of(path)});
    }

    const std::function<bool()>& go_on_;
    StickFiles found_;
    fs::path stick_;
    std::size_t entries_ = 0;
};

} // namespace

std::vector<fs::path> mounted_sticks()
{
    std::vector<fs::path> sticks;
    add_mounts("/media", 2, sticks);
    add_mounts("/run/media", 2, sticks);
    add_mounts("/mnt", 1, sticks);
    std::ranges::sort(sticks);
    return sticks;
}

StickFiles find_on_sticks(const std::vector<fs::path>& sticks, const std::function<bool()>& go_on)
{
    Search search(go_on);
    std::size_t there = 0;
    for (const auto& stick : sticks) {
        std::error_code unknown;
        if (!fs::is_directory(stick, unknown))
            continue;
        ++there;
        search.stick(stick);
    }
    auto found = search.found();
    found.sticks = there;
    return found;
}

bool is_there(const StickFile& file)
{
    std::error_code unknown;
    return fs::exists(file.path, unknown);
}

} // namespace kiosk
