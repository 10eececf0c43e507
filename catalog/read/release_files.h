// Finds the files of a release: a folder with its CSV files, or one folder further in, as the downloads unpack.
#pragma once

#include "catalog/read/byte_stream.h"

#include <filesystem>
#include <memory>
#include <optional>
#include <string>

namespace catalog {

/// One file of a release, wherever it lies.
struct ReleaseFile {
    std::string name; ///< as people find it: the path
    std::filesystem::path path;
    std::uint64_t size = 0;
    [[nodiscard]] core::Result<std::unique_ptr<ByteStream>> open() const;
};

/// The files of a release that are read.
struct ReleaseFiles {
    ReleaseFile food;
    ReleaseFile branded;
    ReleaseFile amounts;
    [[nodiscard]] std::uint64_t size() const { return food.size + branded.size + amounts.size; }
};

/// Whether a path is meant as a release: a folder in which branded_food.csv lies.
[[nodiscard]] bool is_release(const std::filesystem::path& source);

/// The files. Errors: NoSuchFile, with the names of all that are missing.
[[nodiscard]] core::Result<ReleaseFiles> find_release(const std::filesystem::path& source);

} // namespace catalog
