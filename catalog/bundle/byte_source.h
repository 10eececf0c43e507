// Bytes of a file from front to back, in one pass: a stick may be pulled out at any of them.
#pragma once

#include "core/error.h"

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <span>

namespace catalog {

/// Where a bundle is read from; tests put one in its place that ends early or breaks.
class ByteSource {
public:
    ByteSource() = default;
    ByteSource(const ByteSource&) = delete;
    ByteSource& operator=(const ByteSource&) = delete;
    virtual ~ByteSource() = default;
    /// How many bytes there were when it was opened.
    [[nodiscard]] virtual std::uint64_t size() const = 0;
    /// Fills the span as far as there are bytes; returns how many came, fewer only at the end.
    /// Throws std::system_error when the disk fails.
    [[nodiscard]] virtual std::size_t read(std::span<std::uint8_t> into) = 0;
};

/// Opens a file. Errors: NoSuchFile, IsFolder, CannotRead.
[[nodiscard]] core::Result<std::unique_ptr<ByteSource>> open_bytes(const std::filesystem::path& path);

} // namespace catalog
