// A disk that loses power at a chosen step, and with it everything that was not synced by then.
#pragma once

#include "catalog/file/safe_write.h"

#include <filesystem>
#include <optional>
#include <set>
#include <string>

namespace test {

/// What the power's going looks like to a program: it stops there. No std::exception, so that nobody mistakes it for a
/// fault that can be handled.
struct PowerCut {};

/// Does as the real disk does until the chosen step, then throws PowerCut. `restart` leaves the files as a disk may
/// that kept only what it was told to keep: content that was not synced is torn, a rename whose folder was not synced
/// is undone or kept, as the test chooses.
class BrokenDisk : public catalog::Disk {
public:
    enum class Rename { Kept, Undone };

    /// The power goes before step number `steps` + 1 (0: before the first one).
    BrokenDisk(std::size_t steps, Rename unsynced_rename) : steps_left_(steps), unsynced_rename_(unsynced_rename) {}

    void sync_file(const std::filesystem::path& file) override;
    void rename(const std::filesystem::path& from, const std::filesystem::path& to) override;
    void sync_folder(const std::filesystem::path& folder) override;

    /// Makes the files what they are after the power is back.
    void restart();

    /// The same for what was made anew under a folder: a file that was not synced is torn, and a file or folder whose
    /// own folder was not synced is gone. What is in `before` was there already, and stays.
    void restart(const std::filesystem::path& root, const std::set<std::filesystem::path>& before);

private:
    void step();

    /// A rename that the disk may still forget.
    struct Renamed {
        std::filesystem::path to;
        std::optional<std::string> before; ///< what lay there; nothing when nothing did
        bool synced;                       ///< whether the new content had reached the disk
        bool kept;                         ///< whether the new name survives
    };

    std::size_t steps_left_;
    Rename unsynced_rename_;
    std::set<std::filesystem::path> synced_;
    std::set<std::filesystem::path> synced_names_; ///< whose folder was synced while they were there
    std::optional<Renamed> renamed_;
};

/// All that lies under a folder, at any depth.
[[nodiscard]] std::set<std::filesystem::path> all_under(const std::filesystem::path& root);

} // namespace test
