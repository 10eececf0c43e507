// A file that is written from front to back where none lies yet; every step may fail, and none is passed over.
#pragma once

#include "catalog/file/safe_write.h"
#include "core/error.h"

#include <cstdint>
#include <filesystem>
#include <span>

namespace catalog {

/// A new file while it is written. Its folder is the caller's care.
class NewFile {
public:
    /// Makes the file, readable by all who may see its folder. Errors: CannotWrite, also when something lies there.
    [[nodiscard]] static core::Result<NewFile> make(const std::filesystem::path& path, Disk& disk);
    NewFile(NewFile&& other) noexcept;
    NewFile& operator=(NewFile&&) = delete;
    ~NewFile();

    /// Writes behind what is there. Errors: CannotWrite.
    [[nodiscard]] core::Result<void> add(std::span<const std::uint8_t> bytes);
    /// Closes it, and sees its bytes onto the disk. Errors: CannotWrite.
    [[nodiscard]] core::Result<void> finish();

private:
    NewFile(std::filesystem::path path, int handle, Disk& disk);
    std::filesystem::path path_;
    int handle_;
    Disk* disk_;
};

/// Makes a folder and those above it that are missing, so that they stay. Errors: CannotWrite.
[[nodiscard]] core::Result<void> make_folders(const std::filesystem::path& folder, Disk& disk);

} // namespace catalog
