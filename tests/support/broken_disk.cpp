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

} // namespace test
