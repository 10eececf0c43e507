// What `pairstand load` says of a release that it does not take, or of which it was asked for something else.
#include "kiosk/command/arguments.h"
#include "kiosk/command/load.h"
#include "tests/support/release_maker.h"
#include "tests/support/temp_folder.h"
#include "tests/support/zip_maker.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <filesystem>
#include <sstream>

namespace {

struct Run {
    int status;
    std::string out;
    std::string err;
};

Run load(const kiosk::LoadArguments& asked)
{
    std::ostringstream out;
    std::ostringstream err;
    const int status = kiosk::load(asked, out, err);
    return {status, out.str(), err.str()};
}

std::string release_in(const test::TempFolder& folder)
{
    return test::make_plain_release(folder.file("release"), 60);
}

} // namespace

TEST_CASE("load command, release: every wrong line of a list of numbers is told as in a sheet, the first ten of many")
{
    const test::TempFolder folder;
    const auto release = release_in(folder);
    const auto shop = folder.file("shop");
    const auto asked = [&](const std::string& list) {
        return load({.sources = {release}, .into = shop, .numbers = folder.write("list.txt", list)});
    };
    const auto two = asked("9520700000033\r\n9521234543213\n\n952123\n");
    CHECK(two.status == 2);
    CHECK(two.err ==
          folder.file("list.txt") +
              ", row 1: found \"9520700000033\", expected a number whose last digit fits the others: compare "
              "it with the package.\n" +
              folder.file("list.txt") +
              ", row 4: found \"952123\", expected 8, 12, 13 or 14 digits with their check digit.\n"
              "Nothing was loaded: 2 faults. " +
              shop + " was not written. Put right what is named, and load again.\n");
    std::string long_list;
    for (int row = 0; row < 30; ++row)
        long_list += "oats\n";
    const auto many = asked(long_list);
    CHECK(std::ranges::count(many.err, '\n') == 12);
    CHECK(many.err.find("... and 20 more faults.\nNothing was loaded: 30 faults.") != std::string::npos);
    const auto empty = asked("\xEF\xBB\xBF\n"); // would ask for nothing, which is the whole release
    CHECK(empty.status == 2);
    CHECK(empty.err.find("list.txt: found nothing, expected a product number on each line.\n") != std::string::npos);
    const auto of_folder = load({.sources = {release}, .into = shop, .numbers = release});
    CHECK(of_folder.err.starts_with(release + ": this is a folder; give the name of a file.\n"));
    CHECK_FALSE(std::filesystem::exists(shop));
}

TEST_CASE("load command, release: a folder or zip file without all of its files names those that are missing")
{
    const test::TempFolder folder;
    const auto release = release_in(folder);
    const auto shop = folder.file("shop");
    const auto foods = test::bytes_of(release + "/food.csv");
    const auto branded = test::bytes_of(release + "/branded_food.csv");
    const auto asked = [&](const std::string& source) { return load({.sources = {source}, .into = shop}); };
    const auto words = [](const std::string& source, const std::string& missing) {
        return "pairstand load: " + source + ": not all files of a label release are here, missing: " + missing +
               "; unpack the whole download into one folder, or give its zip file as it was downloaded.\n";
    };
    std::filesystem::remove(release + "/food_nutrient.csv");
    CHECK(asked(release).err == words(release, "food_nutrient.csv"));
    std::filesystem::remove(release + "/branded_food.csv");
    const auto food_alone = asked(release);
    CHECK(food_alone.status == 2);
    CHECK(food_alone.err == words(release, "branded_food.csv, food_nutrient.csv"));
    const auto zip = folder.write("some.zip", test::zip_of({{"a/food.csv", foods}}));
    CHECK(asked(zip).err == words(zip, "branded_food.csv, food_nutrient.csv"));
    const auto more = folder.write("more.zip", test::zip_of({{"food.csv", foods}, {"branded_food.csv", branded}}));
    CHECK(asked(more).err == words(more, "food_nutrient.csv"));
    CHECK_FALSE(std::filesystem::exists(shop));
}
