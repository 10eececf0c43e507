// The members of a zip file, listed and read one by one, without ever writing one to a disk: no bombs, no paths.
// Source: PKWARE, APPNOTE.TXT - .ZIP File Format Specification, 6.3.10 (zip64 in 4.5.3). The library behind it shows
// only in zip.cpp.
#pragma once

#include "core/error.h"

#include <cstddef>
#include <cstdint>
#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace catalog {

/// What a zip file may hold at most; anything above is refused before a byte of a member is read.
struct ZipLimits {
    std::uint64_t most_members = 1'000;
    std::uint64_t largest_total = 64ULL << 30U; ///< bytes of all members together, unpacked
    /// How many times larger than packed a member may be that has more than a mebibyte. Deflate reaches 1,032 at most;
    /// tables of a release reach 10 to 30.
    std::uint64_t highest_ratio = 200;
};

/// One member, as the directory of the zip file tells it.
struct ZipMember {
    std::string name;         ///< with the folders in it, "/" between them; never one that leads outside
    std::uint64_t size = 0;   ///< bytes, unpacked
    std::uint64_t packed = 0; ///< bytes in the zip file
    std::uint64_t place = 0;  ///< the library's number for it
};

/// One member as it is read, from its beginning on. The ZipFile that it is of must live longer.
class ZipReader {
public:
    ZipReader(ZipReader&&) noexcept;
    ZipReader& operator=(ZipReader&&) noexcept;
    ~ZipReader();

    /// Reads up to `size` bytes; gives how many, 0 at the end and only there. Before it says 0 the whole member was
    /// checked against its length and CRC-32. Errors: TornFile, CannotRead.
    [[nodiscard]] core::Result<std::size_t> read(char* to, std::size_t size);

    /// How many bytes were read so far, of how many.
    [[nodiscard]] std::uint64_t done() const;
    [[nodiscard]] std::uint64_t size() const;

private:
    friend class ZipFile;
    struct Inside;
    explicit ZipReader(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> inside_;
};

/// An open zip file. For one thread at a time; may be moved while readers are open.
class ZipFile {
public:
    /// Opens a file and reads its directory. `source` in errors is the path.
    /// Errors: NoSuchFile, IsFolder, CannotRead, Empty; TornFile (no directory at its end, or a damaged one); TooLarge
    /// (more than `limits`); BadEncoding (a member whose name leads outside, stands twice, or that is locked with a
    /// password or packed in a way that is not understood).
    [[nodiscard]] static core::Result<ZipFile> open(const std::string& path, const ZipLimits& limits = {});

    /// The same of bytes in memory, which must live longer than the ZipFile.
    [[nodiscard]] static core::Result<ZipFile> of_bytes(std::string_view bytes, const std::string& source,
                                                        const ZipLimits& limits = {});

    ZipFile(ZipFile&&) noexcept;
    ZipFile& operator=(ZipFile&&) noexcept;
    ~ZipFile();

    /// All members but folders, in the order of the directory.
    [[nodiscard]] std::span<const ZipMember> members() const;

    /// The member of exactly this name; nullptr without one.
    [[nodiscard]] const ZipMember* member(std::string_view name) const;

    /// Begins to read a member of this file. Errors: TornFile, CannotRead.
    [[nodiscard]] core::Result<ZipReader> read(const ZipMember& member) const;

private:
    struct Inside;
    explicit ZipFile(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> inside_;
};

/// Whether these first bytes of a file are those of a zip file (that of an empty one included).
[[nodiscard]] bool is_zip(std::string_view first_bytes);

} // namespace catalog
