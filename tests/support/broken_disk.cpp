#include "tests/support/broken_disk.h"

#include "tests/support/temp_folder.h"

#include <fstream>

namespace test {

namespace fs = std::filesystem;

void BrokenDisk::step()
{
    if (steps_left_ == 0)
        throw PowerCut{};
    --steps_left_;
}

void BrokenDisk::sync_file(const fs::path& file)
{
    step();
    catalog::Disk::sync_file(file);
    synced_.insert(file);
}

void BrokenDisk::rename(const fs::path& from, const fs::path& to)
{
    step();
    renamed_ = Renamed{to, std::nullopt, synced_.contains(from), unsynced_rename_ == Rename::Kept};
    if (fs::exists(to))
        renamed_->before = bytes_of(to);
    catalog::Disk::rename(from, to);
}

void BrokenDisk::sync_folder(const fs::path& folder)
{
    step();
    catalog::Disk::sync_folder(folder);
    for (const auto& entry : fs::directory_iterator(folder)) // a name that comes later is not synced
        synced_names_.insert(entry.path());
    if (renamed_)
        renamed_->kept = true; // the name alone: content that was not synced is still torn
}

void BrokenDisk::restart()
{
    if (!renamed_)
        return;
    if (renamed_->kept) {
        if (!renamed_->synced)
            fs::resize_file(renamed_->to, fs::file_size(renamed_->to) / 2);
    } else if (renamed_->before) {
        std::ofstream(renamed_->to, std::ios::binary) << *renamed_->before;
    } else {
        fs::remove(renamed_->to);
    }
}

void BrokenDisk::restart(const fs::path& root, const std::set<fs::path>& before)
{
    restart();
    for (const auto& path : all_under(root)) {
        if (before.contains(path) || (renamed_ && path == renamed_->to) || !fs::exists(path))
            continue;
        if (!synced_names_.contains(path))
            fs::remove_all(path);
        else if (fs::is_regular_file(path) && !synced_.contains(path))
            fs::resize_file(path, fs::file_size(path) / 2);
    }
}

std::set<fs::path> all_under(const fs::path& root)
{
    std::set<fs::path> all;
    if (fs::exists(root))
        for (const auto& entry : fs::recursive_directory_iterator(root))
            all.insert(entry.path());
    return all;
}

} // namespace test
