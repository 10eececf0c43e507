// Puts a new file in the place of an old one so that, whatever breaks on the way, one of the two lies there whole.
// The order is: write aside, sync, rename, sync the folder (rename(2), fsync(2)).
#pragma once

#include "core/error.h"

#include <cstdint>
#include <filesystem>
#include <span>
#include <string>

namespace catalog {

/// What safe writing asks of the disk; tests put one in its place that loses power at a chosen step.
/// Every function throws std::system_error when the disk refuses.
class Disk {
public:
    Disk() = default;
    Disk(const Disk&) = delete;
    Disk& operator=(const Disk&) = delete;
    virtual ~Disk() = default;
    virtual void sync_file(const std::filesystem::path& file);
    virtual void rename(const std::filesystem::path& from, const std::filesystem::path& to);
    /// Gives a file a second name; a disk without second names gets a copy, synced.
    virtual void link(const std::filesystem::path& file, const std::filesystem::path& other_name);
    virtual void sync_folder(const std::filesystem::path& folder);
    /// How many bytes a program of this user may still write there.
    [[nodiscard]] virtual std::uint64_t room(const std::filesystem::path& folder);
    /// Writes all of the bytes to an open file.
    virtual void write(int handle, std::span<const std::uint8_t> bytes);
};

/// The disk of this machine.
[[nodiscard]] Disk& real_disk();

/// Keeps every other writer out of a folder as long as it lives; ends with the process, however that ends.
class FolderLock {
public:
    /// Errors: CannotWrite when the folder is missing, Busy when another writer holds it.
    [[nodiscard]] static core::Result<FolderLock> take(const std::filesystem::path& folder);
    FolderLock(FolderLock&& other) noexcept;
    FolderLock& operator=(FolderLock&&) = delete;
    ~FolderLock();

private:
    explicit FolderLock(int handle) : handle_(handle) {}
    int handle_;
};

/// One replacement of a file. Until `commit` the old file is untouched; without it what was written is thrown away.
class SafeWrite {
public:
    /// Locks the folder of `target` (a link is followed to the file it names) and clears away what a broken off
    /// writing left. Errors: IsFolder, Busy, CannotWrite.
    [[nodiscard]] static core::Result<SafeWrite> begin(const std::filesystem::path& target, Disk& disk = real_disk());

    SafeWrite(SafeWrite&& other) noexcept;
    SafeWrite& operator=(SafeWrite&&) = delete;
    ~SafeWrite();

    /// Where the new file is to be written; nothing lies there yet.
    [[nodiscard]] const std::filesystem::path& aside() const { return aside_; }

    /// What happens to the file that was kept beside the target, former_of(target), when the new one takes its place.
    enum class Former {
        Untouched,
        Kept,    ///< the old file is kept there, instead of what was
        Dropped, ///< nothing stays there: it would be older than the file before this one
    };
    void set_former(Former former) { former_ = former; }

    /// Puts the new file, closed by now, in the place of the old one, with the old one's permissions. When this returns
    /// without an error the new file is there and stays there. Errors: CannotWrite.
    [[nodiscard]] core::Result<void> commit();

private:
    SafeWrite(std::filesystem::path target, FolderLock lock, Disk& disk);
    void clear_aside() const noexcept;
    void put_former_away();

    std::filesystem::path target_;
    std::filesystem::path aside_;
    FolderLock lock_;
    Disk* disk_;
    bool open_ = true;
    Former former_ = Former::Untouched;
};

/// Where a writing that keeps the former file puts it: beside the target, which is followed when it is a link.
[[nodiscard]] std::filesystem::path former_of(const std::filesystem::path& target);

/// The folder that a file of this name lies in: "." for a bare name.
[[nodiscard]] std::filesystem::path folder_of(const std::filesystem::path& file);

} // namespace catalog
