// Bytes from outside, one piece after the other: a file, a member of a zip. A stick may be pulled out at any of them.
#pragma once

#include "core/error.h"

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <span>

namespace catalog {

/// Where bytes come from. For one thread at a time.
class ByteStream {
public:
    ByteStream() = default;
    ByteStream(const ByteStream&) = delete;
    ByteStream& operator=(const ByteStream&) = delete;
    virtual ~ByteStream() = default;

    /// Reads up to `size` bytes; 0 at the end. Errors: CannotRead (a pulled stick, a torn zip).
    [[nodiscard]] virtual core::Result<std::size_t> read(char* bytes, std::size_t size) = 0;

    /// How many bytes there are in all, as far as is known.
    [[nodiscard]] virtual std::uint64_t size() const = 0;
};

/// Fills the span as far as there are bytes; returns how many came, fewer only at the end. Errors: those of `read`.
[[nodiscard]] core::Result<std::size_t> fill(ByteStream& from, std::span<std::uint8_t> into);

/// A file. Errors: NoSuchFile, IsFolder, CannotRead, with the path as their source.
[[nodiscard]] core::Result<std::unique_ptr<ByteStream>> open_file(const std::filesystem::path& path);

} // namespace catalog
