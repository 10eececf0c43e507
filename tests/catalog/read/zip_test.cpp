#include "catalog/read/zip.h"
#include "tests/support/temp_folder.h"
#include "tests/support/zip_maker.h"

#include <doctest/doctest.h>

#include <cstdio>
#include <filesystem>
#include <memory>
#include <random>
#include <unistd.h>

using catalog::ZipFile;
using catalog::ZipLimits;
using core::Error;

namespace {

/// All of a member in pieces of a few bytes; what went wrong, if anything did.
core::Result<std::string> whole(const ZipFile& zip, const catalog::ZipMember& member, std::size_t piece = 7)
{
    auto reader = zip.read(member);
    if (!reader)
        return tl::make_unexpected(reader.error());
    std::string bytes;
    std::string part(piece, '\0');
    for (;;) {
        const auto length = reader->read(part.data(), part.size());
        if (!length)
            return tl::make_unexpected(length.error());
        if (*length == 0)
            return bytes;
        bytes.append(part, 0, *length);
    }
}

std::string noise(std::size_t size)
{
    std::mt19937 random(5);
    std::string bytes;
    while (bytes.size() < size)
        bytes += static_cast<char>('a' + random() % 26);
    return bytes;
}

std::string replaced(std::string bytes, std::string_view from, std::string_view to)
{
    REQUIRE(from.size() == to.size());
    for (auto at = bytes.find(from); at != std::string::npos; at = bytes.find(from, at + to.size()))
        bytes.replace(at, from.size(), to);
    return bytes;
}

Error refused(const std::string& bytes, const ZipLimits& limits = {})
{
    auto zip = ZipFile::of_bytes(bytes, "x.zip", limits);
    REQUIRE_FALSE(zip.has_value());
    CHECK(zip.error().place.source == "x.zip");
    return zip.error();
}

} // namespace

TEST_CASE("zip: members are listed and read in pieces, from bytes and from a file")
{
    const auto bytes =
        test::zip_of({{"folder/", ""}, {"folder/one.txt", "one"}, {"two.txt", ""}, {"three.txt", noise(100'000)}});
    const test::TempFolder folder;
    const auto path = folder.write("a.zip", bytes);
    for (const bool from_file : {true, false}) {
        const auto zip = from_file ? ZipFile::open(path) : ZipFile::of_bytes(bytes, "a.zip");
        REQUIRE(zip.has_value());
        REQUIRE(zip->members().size() == 3);
        CHECK(zip->members()[0].name == "folder/one.txt");
        CHECK(zip->members()[2].size == 100'000);
        CHECK(zip->member("one.txt") == nullptr);
        CHECK(whole(*zip, zip->members()[0]) == "one");
        CHECK(whole(*zip, zip->members()[1]) == "");
        CHECK(whole(*zip, *zip->member("three.txt"), 4096) == noise(100'000));
    }
}

TEST_CASE("zip: two members are read at once, and a reader tells how far it is")
{
    const auto bytes = test::zip_of({{"a", "abcdef"}, {"b", "123456"}});
    const auto zip = ZipFile::of_bytes(bytes, "x.zip");
    auto a = zip->read(zip->members()[0]);
    auto b = zip->read(zip->members()[1]);
    char piece[3];
    CHECK(a->read(piece, 3) == 3U);
    CHECK(b->read(piece, 3) == 3U);
    CHECK(std::string_view(piece, 3) == "123");
    CHECK(a->read(piece, 3) == 3U);
    CHECK(std::string_view(piece, 3) == "def");
    CHECK(a->done() == 6);
    CHECK(b->done() == 3);
    CHECK(b->size() == 6);
}

TEST_CASE("zip: a file that is torn anywhere gives an error and never wrong bytes")
{
    const auto content = noise(3000);
    const auto bytes = test::zip_of({{"a.txt", content}});
    for (std::size_t length = 1; length < bytes.size(); length += length < 100 ? 1 : 13) {
        CAPTURE(length);
        CHECK(refused(bytes.substr(0, length)).kind == Error::Kind::TornFile);
    }
}

TEST_CASE("zip: a changed byte gives an error, the same bytes, or another name, but never wrong bytes")
{
    const auto content = noise(500);
    const auto bytes = test::zip_of({{"a.txt", content}});
    std::size_t told = 0;
    for (std::size_t at = 0; at < bytes.size(); ++at) {
        CAPTURE(at);
        auto damaged = bytes;
        damaged[at] = static_cast<char>(damaged[at] ^ 0x11);
        const auto zip = ZipFile::of_bytes(damaged, "x.zip");
        if (!zip || zip->members().empty()) {
            ++told;
            continue;
        }
        if (const auto read = whole(*zip, zip->members()[0]))
            CHECK(*read == content);
        else
            ++told;
    }
    CHECK(told > bytes.size() / 2);
}

TEST_CASE("zip: what grows too much is refused before it is unpacked")
{
    const std::string blanks(4U << 20U, ' ');
    const auto bytes = test::zip_of({{"bomb.xml", blanks}});
    CHECK(bytes.size() < 10'000);
    const auto error = refused(bytes);
    CHECK(error.kind == Error::Kind::TooLarge);
    CHECK(error.place.found == "a packed file that grows more than 200 times when unpacked");
    CHECK(refused(bytes, {.largest_total = 1U << 20U}).place.found == "more than 1048576 bytes unpacked");
    CHECK(ZipFile::of_bytes(bytes, "x.zip", {.highest_ratio = 1100}).has_value());
    const auto three = test::zip_of({{"a", noise(600)}, {"b", noise(600)}, {"c", noise(600)}});
    CHECK(refused(three, {.most_members = 2}).place.found == "3 packed files");
    CHECK(refused(three, {.largest_total = 1799}).kind == Error::Kind::TooLarge);
    CHECK(ZipFile::of_bytes(three, "x.zip", {.largest_total = 1800}).has_value());
}

TEST_CASE("zip: a member that says it is smaller than it is gives an error, and no more bytes than it said")
{
    // Offsets of the sizes: APPNOTE 4.3.7 (local header) and 4.3.12 (central directory).
    auto bytes = test::zip_of({{"a", noise(5000)}});
    const auto central = bytes.find("PK\x01\x02");
    bytes[central + 24] = 10;
    bytes[central + 25] = 0;
    const auto zip = ZipFile::of_bytes(bytes, "x.zip");
    REQUIRE(zip.has_value());
    CHECK(zip->members()[0].size == 10);
    const auto read = whole(*zip, zip->members()[0]);
    REQUIRE_FALSE(read.has_value());
    CHECK(read.error().kind == Error::Kind::TornFile);
}

TEST_CASE("zip: names that lead outside, stand twice or are locked are refused")
{
    for (const std::string_view name : {"../a.txt", "a/../../b", "/etc/passwd", "a\\..\\b", "C:/a", "..", "a/.."}) {
        CAPTURE(name);
        const auto error = refused(test::zip_of({{"good.txt", "x"}, {name, "y"}}));
        CHECK(error.kind == Error::Kind::BadEncoding);
        CHECK(error.place.found == "a packed file whose name leads outside (\"" + std::string(name) + "\")");
    }
    CHECK(ZipFile::of_bytes(test::zip_of({{"..a/b..", "x"}}), "x.zip").has_value());
    const auto doubled = replaced(test::zip_of({{"one.txt", "x"}, {"two.txt", "y"}}), "two.txt", "one.txt");
    CHECK(refused(doubled).place.found == "the packed file \"one.txt\" twice");
    CHECK(refused(test::zip_of({{"one.txt", "x"}}, "secret")).place.found == "a file locked with a password");
}

TEST_CASE("zip: files that are none")
{
    CHECK(refused("").kind == Error::Kind::Empty);
    CHECK(refused(std::string("PK\x05\x06") + std::string(18, '\0')).kind == Error::Kind::Empty);
    CHECK(refused("gtin,name\n").kind == Error::Kind::TornFile);
    const test::TempFolder folder;
    CHECK(ZipFile::open(folder.file("none.zip")).error().kind == Error::Kind::NoSuchFile);
    CHECK(ZipFile::open(std::filesystem::path(folder.file("x")).parent_path()).error().kind == Error::Kind::IsFolder);
    CHECK(ZipFile::open(folder.write("short.zip", "PK\x03\x04")).error().kind == Error::Kind::TornFile);
    CHECK(catalog::is_zip("PK\x03\x04..."));
    CHECK_FALSE(catalog::is_zip("gtin"));
}

namespace {

std::string low_first(std::uint64_t number, int bytes)
{
    std::string text;
    for (int i = 0; i < bytes; ++i)
        text += static_cast<char>(number >> (8 * i) & 0xFFU);
    return text;
}

/// Writes a zip64 file with one stored member of this size: blanks of no cost (a hole in the file) behind `start`.
/// Source: APPNOTE.TXT 4.3.7, 4.3.12, 4.3.14, 4.3.15, 4.3.16, 4.5.3.
void write_large_zip(const std::string& path, std::string_view start, std::uint64_t size)
{
    const auto sizes = low_first(0x0001, 2) + low_first(16, 2) + low_first(size, 8) + low_first(size, 8);
    const std::string flags_to_crc =
        low_first(45, 2) + low_first(0, 2) + low_first(0, 2) + low_first(0, 4) + low_first(0, 4);
    const auto common = flags_to_crc + std::string(8, '\xFF') + low_first(5, 2) + low_first(sizes.size(), 2);
    const auto local = std::string("PK\x03\x04") + common + "a.csv" + sizes;
    const auto central =
        std::string("PK\x01\x02") + low_first(45, 2) + common + std::string(14, '\0') + "a.csv" + sizes;
    const auto central_at = local.size() + size;
    const auto end64 = std::string("PK\x06\x06") + low_first(44, 8) + low_first(45, 2) + low_first(45, 2) +
                       std::string(8, '\0') + low_first(1, 8) + low_first(1, 8) + low_first(central.size(), 8) +
                       low_first(central_at, 8);
    const auto locator =
        std::string("PK\x06\x07") + low_first(0, 4) + low_first(central_at + central.size(), 8) + low_first(1, 4);
    const auto end = std::string("PK\x05\x06") + std::string(4, '\0') + low_first(1, 2) + low_first(1, 2) +
                     std::string(8, '\xFF') + low_first(0, 2);
    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> file(std::fopen(path.c_str(), "wbe"), &std::fclose);
    REQUIRE(file);
    const auto write = [&](std::string_view bytes) {
        REQUIRE(std::fwrite(bytes.data(), 1, bytes.size(), file.get()) == bytes.size());
    };
    write(local);
    write(start);
    REQUIRE(fseeko(file.get(), static_cast<off_t>(central_at), SEEK_SET) == 0);
    write(central + end64 + locator + end);
}

} // namespace

TEST_CASE("zip: a member of more than 4 GiB is listed with its whole size and read")
{
    const test::TempFolder folder;
    const auto path = folder.file("large.zip");
    constexpr std::uint64_t size = (5ULL << 30U) + 7;
    write_large_zip(path, "fdc_id,amount\n", size);
    const auto zip = ZipFile::open(path);
    REQUIRE(zip.has_value());
    REQUIRE(zip->members().size() == 1);
    CHECK(zip->members()[0].size == size);
    auto reader = zip->read(zip->members()[0]);
    REQUIRE(reader.has_value());
    std::string piece(14, '\0');
    CHECK(reader->read(piece.data(), piece.size()) == 14U);
    CHECK(piece == "fdc_id,amount\n");
}
