// Opens a file from outside for reading: no folder, no pipe that keeps everybody waiting.
#pragma once

#include "core/error.h"

#include <cstdint>
#include <filesystem>

namespace catalog {

/// An open file; who holds it closes the handle.
struct OpenFile {
    int handle;
    std::uint64_t size; ///< when it was opened
};

/// Opens it. Errors: NoSuchFile, IsFolder, CannotRead (also for what is no file), with the path as their source.
[[nodiscard]] core::Result<OpenFile> open_to_read(const std::filesystem::path& path);

} // namespace catalog
