#include "catalog/file/safe_write.h"
#include "tests/support/broken_disk.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <sys/stat.h>
#include <unistd.h>

using catalog::SafeWrite;
using test::BrokenDisk;
using test::bytes_of;

namespace fs = std::filesystem;

namespace {

/// Replaces a file; true when that was acknowledged.
bool replace(const std::string& target, std::string_view content, catalog::Disk& disk = catalog::real_disk())
{
    auto writing = SafeWrite::begin(target, disk);
    if (!writing)
        return false;
    std::FILE* file = std::fopen(writing->aside().c_str(), "wb");
    REQUIRE(file != nullptr);
    std::fwrite(content.data(), 1, content.size(), file);
    std::fclose(file);
    return writing->commit().has_value();
}

std::size_t files_in(const test::TempFolder& folder)
{
    const auto files = fs::directory_iterator(folder.file(""));
    return static_cast<std::size_t>(std::distance(begin(files), end(files)));
}

} // namespace

TEST_CASE("safe write: a new file, then another in its place, and nothing beside them")
{
    const test::TempFolder folder;
    const auto target = folder.file("shop");
    CHECK(replace(target, "first"));
    CHECK(replace(target, "second"));
    CHECK(bytes_of(target) == "second");
    CHECK(files_in(folder) == 1);
}

TEST_CASE("safe write: without commit all is as before")
{
    const test::TempFolder folder;
    const auto target = folder.write("shop", "old");
    {
        const auto writing = SafeWrite::begin(target).value();
        std::FILE* file = std::fopen(writing.aside().c_str(), "wb");
        REQUIRE(file != nullptr);
        std::fclose(file);
        CHECK(files_in(folder) == 2);
    }
    CHECK(bytes_of(target) == "old");
    CHECK(files_in(folder) == 1);
}

// Steps: sync the file, rename, sync the folder. Whatever the disk forgets, the old or the new file is there whole;
// once the writing was acknowledged, it is the new one.
TEST_CASE("safe write: the power may go at any step")
{
    const std::string old(100'000, 'o');
    const std::string fresh(100'000, 'n');
    for (const auto unsynced : {BrokenDisk::Rename::Kept, BrokenDisk::Rename::Undone})
        for (std::size_t steps = 0; steps <= 4; ++steps) {
            CAPTURE(steps);
            const test::TempFolder folder;
            const auto target = folder.write("shop", old);
            BrokenDisk disk(steps, unsynced);
            bool acknowledged = false;
            try {
                acknowledged = replace(target, fresh, disk);
            } catch (const test::PowerCut&) {
                CHECK(steps < 3);
            }
            disk.restart();
            CHECK(acknowledged == (steps >= 3));
            const auto found = bytes_of(target);
            CHECK((found == fresh || (found == old && !acknowledged)));
        }
}

TEST_CASE("safe write: the disk of the tests does forget what was not synced")
{
    const test::TempFolder folder;
    const auto target = folder.write("shop", "old");
    const auto aside = folder.write("aside", "longer than old");
    SUBCASE("content")
    {
        BrokenDisk disk(9, BrokenDisk::Rename::Kept);
        disk.rename(aside, target);
        disk.sync_folder(folder.file(""));
        disk.restart();
        CHECK(bytes_of(target) == "longer ");
    }
    SUBCASE("a name")
    {
        BrokenDisk disk(9, BrokenDisk::Rename::Undone);
        disk.sync_file(aside);
        disk.rename(aside, target);
        disk.restart();
        CHECK(bytes_of(target) == "old");
    }
}

TEST_CASE("safe write: one writer a folder")
{
    const test::TempFolder folder;
    const auto writing = SafeWrite::begin(folder.file("shop"));
    REQUIRE(writing);
    const auto second = SafeWrite::begin(folder.file("shop"));
    REQUIRE_FALSE(second);
    CHECK(second.error().kind == core::Error::Kind::Busy);
    CHECK(second.error().place.source == folder.file("shop"));
}

TEST_CASE("safe write: what a broken off writing left is cleared away")
{
    const test::TempFolder folder;
    const auto target = folder.write("shop", "old");
    const auto aside = SafeWrite::begin(target).value().aside();
    folder.write(aside.filename().string(), "half");
    folder.write(aside.filename().string() + "-journal", "half");
    const auto writing = SafeWrite::begin(target).value();
    CHECK(files_in(folder) == 1);
}

TEST_CASE("safe write: links, permissions and folders stay what they are")
{
    const test::TempFolder folder;
    const auto target = folder.write("shop", "old");
    REQUIRE(::chmod(target.c_str(), 0640) == 0);
    fs::create_symlink("shop", folder.file("link"));
    CHECK(replace(folder.file("link"), "new"));
    CHECK(fs::is_symlink(folder.file("link")));
    CHECK(bytes_of(target) == "new");
    struct stat status {};
    REQUIRE(::stat(target.c_str(), &status) == 0);
    CHECK((status.st_mode & 07777U) == 0640U);
    CHECK_FALSE(SafeWrite::begin(folder.file("")));
    CHECK_FALSE(SafeWrite::begin(folder.file("missing/shop")));
}
