// What the desk finds on a stick: by kind, to a bounded depth, never over a link out of it.
#include "kiosk/desk/stick_files.h"
#include "tests/support/release_maker.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <unistd.h>

namespace {

namespace fs = std::filesystem;

using kiosk::StickFile;

/// A stick in a folder, beside one with something that is not on it.
struct Stick {
    Stick()
    {
        fs::create_directories(path());
        fs::create_directories(folder.file("elsewhere"));
    }
    [[nodiscard]] fs::path path() const { return folder.file("STICK"); }
    void put(const std::string& name, const std::string& bytes = "x") const
    {
        fs::create_directories((path() / name).parent_path());
        (void)folder.write("STICK/" + name, bytes);
    }
    [[nodiscard]] kiosk::StickFiles found() const
    {
        return kiosk::find_on_sticks({path()}, [] { return true; });
    }
    [[nodiscard]] std::string names() const
    {
        auto files = found().files;
        std::ranges::sort(files, {}, &StickFile::path);
        std::string names;
        for (const auto& file : files)
            names += file.path.lexically_relative(path()).string() + " ";
        return names;
    }
    test::TempFolder folder;
};

} // namespace

TEST_CASE("stick: a folder that may not be read is told")
{
    const Stick stick;
    stick.put("own/a.csv");
    stick.put("locked/b.csv");
    fs::permissions(stick.path().parent_path(), fs::perms(0755));
    fs::permissions(stick.path() / "locked", fs::perms::none);
    constexpr uid_t nobody = 65'534; // root may read everything
    const bool root = ::geteuid() == 0 && ::seteuid(nobody) == 0;
    const auto found = stick.found();
    if (root)
        REQUIRE(::seteuid(0) == 0);
    fs::permissions(stick.path() / "locked", fs::perms::owner_all);
    CHECK(found.files.size() == 1);
    CHECK(found.locked == std::vector<fs::path>{stick.path() / "locked"});
}

TEST_CASE("stick: sheets, releases and bundles are told apart, and what is none of them is passed over")
{
    const Stick stick;
    stick.put("a.csv");
    stick.put("B.XLSX");
    stick.put("c.ods");
    stick.put("d.bundle");
    stick.put("e.json");
    stick.put("photo.jpg");
    stick.put("letter.zip"); // no zip at all
    stick.put("._a.csv");    // what other systems leave
    stick.put(".trash/f.csv");
    CHECK(stick.names() == "B.XLSX a.csv c.ods d.bundle e.json ");
    for (const auto& file : stick.found().files) {
        CAPTURE(file.path);
        const auto ending = file.path.extension();
        CHECK(file.kind == (ending == ".bundle" ? StickFile::Kind::Bundle
                            : ending == ".json" ? StickFile::Kind::Release
                                                : StickFile::Kind::Sheet));
        CHECK(file.bytes == 1);
        CHECK(file.day.size() == 10);
        CHECK(file.stick == stick.path());
    }
}

TEST_CASE("stick: a folder with the tables of a release is one thing, with the bytes that are read")
{
    const Stick stick;
    test::ReleaseShape shape;
    shape.products = 3;
    (void)test::make_release(shape, stick.path() / "FoodData_Central_branded_food_csv_2026-04-30");
    const auto found = stick.found();
    REQUIRE(found.files.size() == 1);
    CHECK(found.files[0].kind == StickFile::Kind::Release);
    const auto folder = found.files[0].path;
    CHECK(found.files[0].bytes == fs::file_size(folder / "food.csv") + fs::file_size(folder / "branded_food.csv") +
                                      fs::file_size(folder / "food_nutrient.csv"));
}

TEST_CASE("stick: of a release that was unpacked in part the files that are there are counted, and a sheet is none")
{
    const Stick stick;
    stick.put("release/branded_food.csv", "1234567");
    stick.put("release/food.csv", "123");
    const auto found = stick.found();
    REQUIRE(found.files.size() == 1);
    CHECK(found.files[0].kind == StickFile::Kind::Release);
    CHECK(found.files[0].bytes == 10);
    const Stick sheets; // of a leader who calls a sheet like one of a release's tables
    sheets.put("food.csv");
    sheets.put("drinks.csv");
    CHECK(sheets.names() == "drinks.csv food.csv ");
    for (const auto& file : sheets.found().files)
        CHECK(file.kind == StickFile::Kind::Sheet);
}

TEST_CASE("stick: no link leads out of it, and none makes it endless")
{
    const Stick stick;
    stick.put("a.csv");
    (void)stick.folder.write("elsewhere/secret.csv", "x");
    fs::create_symlink(stick.folder.file("elsewhere/secret.csv"), stick.path() / "b.csv");
    fs::create_directory_symlink(stick.folder.file("elsewhere"), stick.path() / "out");
    fs::create_directory_symlink(stick.path(), stick.path() / "round");
    CHECK(stick.names() == "a.csv ");
}

TEST_CASE("stick: what lies too deep, or behind too much, is not looked at, and that is said")
{
    const Stick stick;
    stick.put("1/2/here.csv");
    CHECK(stick.found().all);
    stick.put("1/2/3/there.csv");
    CHECK(stick.names() == "1/2/here.csv ");
    CHECK(!stick.found().all);
    const Stick full;
    for (std::size_t i = 0; i < kiosk::most_stick_files + 5; ++i)
        full.put(std::to_string(i) + ".csv");
    CHECK(full.found().files.size() == kiosk::most_stick_files);
    CHECK(!full.found().all);
}

TEST_CASE("stick: one that is gone is none, and a touch ends the search")
{
    const Stick stick;
    stick.put("a.csv");
    CHECK(stick.found().sticks == 1);
    CHECK(kiosk::find_on_sticks({stick.path()}, [] { return false; }).files.empty());
    const StickFile file = stick.found().files[0];
    CHECK(kiosk::is_there(file));
    fs::remove_all(stick.path());
    CHECK(!kiosk::is_there(file));
    CHECK(stick.found().sticks == 0);
}
