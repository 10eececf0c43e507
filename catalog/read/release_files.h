// Finds the files of a release: a folder with its CSV files, one folder further in as the downloads unpack, the JSON
// file, or the download itself, still in its zip file.
#pragma once

#include "catalog/file/byte_stream.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>

namespace catalog {

/// One file of a release, wherever it lies.
struct ReleaseFile {
    std::string name; ///< as people find it: the path, or the zip file and the name in it
    std::uint64_t size = 0;
    std::function<core::Result<std::unique_ptr<ByteStream>>()> open;
};

/// The files of a release that are read.
struct ReleaseFiles {
    ReleaseFile food;
    ReleaseFile branded;
    ReleaseFile amounts;
    std::optional<ReleaseFile> json; ///< in place of the other three; it is read twice
    /// How many bytes are read in all.
    [[nodiscard]] std::uint64_t size() const { return json ? 2 * json->size : food.size + branded.size + amounts.size; }
};

/// Whether a path is meant as a release: a folder in which one of its tables lies, a JSON file, or a zip file that has
/// one of them.
[[nodiscard]] bool is_release(const std::filesystem::path& source);

/// The files. Errors: NoSuchFile, with the names of all that are missing in `place.found`; those of ZipFile::open.
[[nodiscard]] core::Result<ReleaseFiles> find_release(const std::filesystem::path& source);

} // namespace catalog
