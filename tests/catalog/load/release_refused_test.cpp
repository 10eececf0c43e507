// Releases that are refused: with something missing, torn, or packed to do harm.
#include "catalog/load/load_release.h"
#include "tests/support/release_maker.h"
#include "tests/support/temp_folder.h"
#include "tests/support/zip_maker.h"

#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

using catalog::load_release;
using Kind = core::Error::Kind;

namespace {

void write(const std::string& path, const std::string& text)
{
    std::ofstream(path, std::ios::binary) << text;
}

} // namespace

TEST_CASE("load release: a zip file that leads outside or grows without measure is refused, and nothing is unpacked")
{
    const test::TempFolder folder;
    test::ReleaseShape shape;
    shape.products = 20;
    test::make_release(shape, folder.file("release"));
    const auto foods = test::bytes_of(folder.file("release/food.csv"));
    const auto branded = test::bytes_of(folder.file("release/branded_food.csv"));
    const auto amounts = test::bytes_of(folder.file("release/food_nutrient.csv"));
    const std::string blank(600U << 20U, ' ');
    struct Bad {
        std::string what;
        Kind kind;
        std::vector<test::Packed> members;
    };
    const std::vector<Bad> all = {
        {"outside",
         Kind::BadEncoding,
         {{"../food.csv", foods}, {"branded_food.csv", branded}, {"food_nutrient.csv", amounts}}},
        {"bomb", Kind::TooLarge, {{"food.csv", foods}, {"branded_food.csv", branded}, {"food_nutrient.csv", blank}}}};
    for (const auto& bad : all) {
        CAPTURE(bad.what);
        const auto refused = load_release(folder.write("bad.zip", test::zip_of(bad.members)), folder.file("in/shop"));
        REQUIRE_FALSE(refused);
        CHECK_FALSE(std::filesystem::exists(folder.file("in/shop")));
        CHECK_FALSE(std::filesystem::exists(folder.file("food.csv")));
        CHECK(refused.error().kind == bad.kind);
    }
}

TEST_CASE("load release: what is missing or broken is named, and nothing is loaded")
{
    const test::TempFolder folder;
    std::filesystem::create_directory(folder.file("r"));
    write(folder.file("r/branded_food.csv"), "\"fdc_id\",\"gtin_upc\"\n");
    const auto refused = [&] {
        const auto loaded = load_release(folder.file("r"), folder.file("shop"));
        REQUIRE_FALSE(loaded);
        CHECK_FALSE(std::filesystem::exists(folder.file("shop")));
        return loaded.error();
    };
    CHECK(refused().kind == Kind::NoSuchFile);
    CHECK(refused().place.found == "food.csv, food_nutrient.csv");
    CHECK(refused().place.source == folder.file("r"));
    write(folder.file("r/food.csv"), "\"fdc_id\",\"description\"\n");
    write(folder.file("r/food_nutrient.csv"), "\"fdc_id\",\"nutrient_id\",\"amount\"\n");
    CHECK(refused().kind == Kind::MissingColumn);
    CHECK(refused().place.expected == "serving_size, serving_size_unit");
    CHECK(refused().place.source == folder.file("r/branded_food.csv"));
    write(folder.file("r/branded_food.csv"), "");
    CHECK(refused().kind == Kind::Empty);
}
