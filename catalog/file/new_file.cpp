#include "catalog/file/new_file.h"

#include <cerrno>
#include <fcntl.h>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>
#include <utility>

namespace catalog {
namespace {

auto cannot_write(const std::filesystem::path& path, const std::string& why)
{
    return core::refuse(core::Error::Kind::CannotWrite, why, core::Place{path.string(), 0, {}, {}, {}});
}

} // namespace

core::Result<NewFile> NewFile::make(const std::filesystem::path& path, Disk& disk)
{
    constexpr mode_t readable = 0644;
    const int handle = ::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, readable);
    if (handle < 0)
        return cannot_write(path, std::generic_category().message(errno));
    return NewFile(path, handle, disk);
}

NewFile::NewFile(std::filesystem::path path, int handle, Disk& disk)
    : path_(std::move(path)), handle_(handle), disk_(&disk)
{
}

NewFile::NewFile(NewFile&& other) noexcept
    : path_(std::move(other.path_)), handle_(std::exchange(other.handle_, -1)), disk_(other.disk_)
{
}

NewFile::~NewFile()
{
    if (handle_ >= 0)
        ::close(handle_);
}

core::Result<void> NewFile::add(std::span<const std::uint8_t> bytes)
{
    try {
        disk_->write(handle_, bytes);
        return {};
    } catch (const std::system_error& error) {
        return cannot_write(path_, error.code().message());
    }
}

core::Result<void> NewFile::finish()
{
    if (::close(std::exchange(handle_, -1)) != 0)
        return cannot_write(path_, std::generic_category().message(errno));
    try {
        disk_->sync_file(path_);
        return {};
    } catch (const std::system_error& error) {
        return cannot_write(path_, error.code().message());
    }
}

core::Result<void> make_folders(const std::filesystem::path& folder, Disk& disk)
{
    std::error_code error;
    if (folder.empty() || std::filesystem::is_directory(folder, error))
        return {};
    if (auto above = make_folders(folder.parent_path(), disk); !above)
        return above;
    try {
        std::filesystem::create_directory(folder);
        disk.sync_folder(folder_of(folder));
        return {};
    } catch (const std::system_error& broken) {
        return cannot_write(folder, broken.code().message());
    }
}

} // namespace catalog
