#include "catalog/file/safe_write.h"

#include <cerrno>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <sys/statvfs.h>
#include <system_error>
#include <unistd.h>
#include <utility>

namespace catalog {
namespace {

namespace fs = std::filesystem;

[[noreturn]] void throw_errno(const fs::path& path)
{
    throw std::system_error(errno, std::generic_category(), path.string());
}

void sync(const fs::path& path, int flags)
{
    const int handle = ::open(path.c_str(), flags | O_CLOEXEC);
    if (handle < 0)
        throw_errno(path);
    const int synced = ::fsync(handle);
    const int why = errno;
    ::close(handle);
    if (synced != 0) {
        errno = why;
        throw_errno(path);
    }
}

auto refuse(core::Error::Kind kind, const fs::path& path, const std::string& detail)
{
    return core::refuse(kind, detail, core::Place{path.string(), 0, {}, {}, {}});
}

auto cannot_write(const fs::path& path, const std::string& detail)
{
    return refuse(core::Error::Kind::CannotWrite, path, detail);
}

/// Where the former file waits for its name.
fs::path former_aside(const fs::path& target)
{
    return target.string() + ".pairstand-former";
}

/// A load by the administrator must not take the catalog away from the station's own user.
void take_over_permissions(const fs::path& from, const fs::path& to)
{
    struct stat old {};
    if (::stat(from.c_str(), &old) != 0)
        return; // there was none: the new file keeps what the system gave it
    if (::chmod(to.c_str(), old.st_mode & 07777U) != 0)
        throw_errno(to);
    if (::geteuid() == 0 && ::chown(to.c_str(), old.st_uid, old.st_gid) != 0)
        throw_errno(to);
}

} // namespace

void Disk::sync_file(const fs::path& file)
{
    sync(file, O_RDONLY);
}

void Disk::rename(const fs::path& from, const fs::path& to)
{
    fs::rename(from, to);
}

void Disk::link(const fs::path& file, const fs::path& other_name)
{
    std::error_code no_second_names;
    fs::create_hard_link(file, other_name, no_second_names);
    if (!no_second_names)
        return;
    fs::copy_file(file, other_name);
    sync_file(other_name);
}

void Disk::sync_folder(const fs::path& folder)
{
    sync(folder, O_RDONLY | O_DIRECTORY);
}

std::uint64_t Disk::room(const fs::path& folder)
{
    struct statvfs found {};
    if (::statvfs(folder.c_str(), &found) != 0)
        throw_errno(folder);
    return static_cast<std::uint64_t>(found.f_bavail) * found.f_frsize;
}

void Disk::write(int handle, std::span<const std::uint8_t> bytes)
{
    while (!bytes.empty()) {
        const ssize_t written = ::write(handle, bytes.data(), bytes.size());
        if (written >= 0)
            bytes = bytes.subspan(static_cast<std::size_t>(written));
        else if (errno != EINTR)
            throw std::system_error(errno, std::generic_category());
    }
}

Disk& real_disk()
{
    static Disk disk; // holds nothing
    return disk;
}

fs::path former_of(const fs::path& target)
{
    std::error_code error;
    const auto real = fs::weakly_canonical(target, error);
    return (error ? target : real).string() + ".pairstand-before";
}

fs::path folder_of(const fs::path& file)
{
    const auto folder = file.parent_path();
    return folder.empty() ? fs::path(".") : folder;
}

core::Result<FolderLock> FolderLock::take(const fs::path& folder)
{
    const int handle = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (handle < 0)
        return cannot_write(folder, std::generic_category().message(errno));
    if (::flock(handle, LOCK_EX | LOCK_NB) == 0)
        return FolderLock(handle);
    const int why = errno;
    ::close(handle);
    if (why == EWOULDBLOCK)
        return refuse(core::Error::Kind::Busy, folder, "another program is writing there");
    return cannot_write(folder, std::generic_category().message(why));
}

FolderLock::FolderLock(FolderLock&& other) noexcept : handle_(std::exchange(other.handle_, -1)) {}

FolderLock::~FolderLock()
{
    if (handle_ >= 0)
        ::close(handle_);
}

core::Result<SafeWrite> SafeWrite::begin(const fs::path& target, Disk& disk)
{
    std::error_code error;
    auto real = fs::weakly_canonical(target, error);
    if (error)
        return cannot_write(target, error.message());
    if (fs::is_directory(real, error))
        return refuse(core::Error::Kind::IsFolder, target, "it is a folder");
    auto lock = FolderLock::take(folder_of(real));
    if (!lock)
        return refuse(lock.error().kind, target, lock.error().detail);
    SafeWrite writing(std::move(real), std::move(*lock), disk);
    writing.clear_aside();
    return writing;
}

SafeWrite::SafeWrite(fs::path target, FolderLock lock, Disk& disk)
    : target_(std::move(target)), aside_(target_.string() + ".pairstand-new"), lock_(std::move(lock)), disk_(&disk)
{
}

SafeWrite::SafeWrite(SafeWrite&& other) noexcept
    : target_(std::move(other.target_)), aside_(std::move(other.aside_)), lock_(std::move(other.lock_)),
      disk_(other.disk_), open_(std::exchange(other.open_, false)), former_(other.former_)
{
}

SafeWrite::~SafeWrite()
{
    if (open_)
        clear_aside();
}

void SafeWrite::clear_aside() const noexcept
{
    std::error_code ignored; // what cannot be removed stops the writing soon enough
    fs::remove(aside_, ignored);
    // A database's journal that outlives its file would be played back into the next file of that name.
    fs::remove(aside_.string() + "-journal", ignored);
    fs::remove(former_aside(target_), ignored);
}

/// The old file gets its second name aside first: at every moment it lies at the target, or the new one does.
void SafeWrite::put_former_away()
{
    const auto former = former_of(target_);
    std::error_code ignored;
    if (former_ == Former::Dropped)
        fs::remove(former, ignored);
    else if (former_ == Former::Kept && fs::exists(target_)) {
        const auto aside = former_aside(target_);
        disk_->link(target_, aside);
        disk_->rename(aside, former);
        fs::remove(aside, ignored); // there still where both are names of one file (rename(2))
    }
}

core::Result<void> SafeWrite::commit()
{
    try {
        take_over_permissions(target_, aside_);
        disk_->sync_file(aside_);
        put_former_away();
        disk_->rename(aside_, target_);
        open_ = false;
        disk_->sync_folder(folder_of(target_));
        return {};
    } catch (const std::system_error& error) {
        return cannot_write(target_, error.code().message());
    }
}

} // namespace catalog
