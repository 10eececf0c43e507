// What a release tells of itself before it is loaded; sheets and bundles are previewed in tests/kiosk/session.
#include "kiosk/desk/preview.h"
#include "tests/support/release_maker.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <filesystem>

namespace {

namespace fs = std::filesystem;
using kiosk::ReleasePreview;

core::Result<kiosk::Preview> look(const fs::path& path, const test::TempFolder& folder)
{
    return kiosk::look_into({kiosk::StickFile::Kind::Release, path, path.parent_path(), 0, ""}, folder.file("data"));
}

} // namespace

TEST_CASE("preview: a release tells whose columns it has, its day and how many records it holds")
{
    struct Row {
        test::ReleaseYear year;
        ReleasePreview::Columns columns;
    };
    // Columns by year: docs/release.md; the generator writes the headers of the downloads of 2019, 2023 and 2026.
    for (const auto& row : {Row{test::ReleaseYear::Of2019, ReleasePreview::Columns::Of2019},
                            Row{test::ReleaseYear::Of2023, ReleasePreview::Columns::From2022},
                            Row{test::ReleaseYear::Of2026, ReleasePreview::Columns::From2026}}) {
        const test::TempFolder folder;
        const fs::path release = folder.file("FoodData_Central_branded_food_csv_2023-10-26");
        test::ReleaseShape shape;
        shape.products = 50;
        shape.year = row.year;
        const auto made = test::make_release(shape, release);
        const auto preview = look(release, folder);
        REQUIRE(preview);
        const auto& told = std::get<ReleasePreview>(*preview);
        CHECK(told.form == ReleasePreview::Form::Folder);
        CHECK(told.columns == row.columns);
        CHECK(told.day == "2023-10-26");
        CHECK(told.counted);
        CHECK(told.records == made.records);
    }
}

TEST_CASE("preview: of a long release the records are told from its beginning, to a tenth")
{
    const test::TempFolder folder;
    const fs::path release = folder.file("release");
    test::ReleaseShape shape;
    shape.products = 7'000;
    const auto made = test::make_release(shape, release);
    const auto preview = look(release, folder);
    REQUIRE(preview);
    const auto& told = std::get<ReleasePreview>(*preview);
    CHECK(!told.counted);
    REQUIRE(told.records);
    CHECK(*told.records > made.records * 9 / 10);
    CHECK(*told.records < made.records * 11 / 10);
    CHECK(told.day.empty());
}

TEST_CASE("preview: a release that lacks a file or a column is refused before it is loaded")
{
    const test::TempFolder folder;
    const fs::path release = folder.file("release");
    test::ReleaseShape shape;
    shape.products = 3;
    (void)test::make_release(shape, release);
    (void)folder.write("release/food_nutrient.csv", "\"id\",\"fdc_id\",\"amount\"\n");
    const auto no_column = look(release, folder);
    REQUIRE(!no_column);
    CHECK(no_column.error().kind == core::Error::Kind::MissingColumn);
    CHECK(no_column.error().place.expected == "nutrient_id");
    fs::remove(release / "food_nutrient.csv");
    const auto no_file = look(release, folder);
    REQUIRE(!no_file);
    CHECK(no_file.error().kind == core::Error::Kind::NoSuchFile);
    CHECK(no_file.error().place.found == "food_nutrient.csv");
}

TEST_CASE("preview: a JSON file that is no release is refused before it is loaded, and a long one is read in part")
{
    const test::TempFolder folder;
    const auto kind = [&](const std::string& json) {
        const auto preview = look(folder.write("some.json", json), folder);
        REQUIRE(!preview);
        return preview.error().kind;
    };
    CHECK(kind(R"({"hello":[1,2,3]})") == core::Error::Kind::NoFoods);
    CHECK(kind(R"({"BrandedFoods": [)") == core::Error::Kind::TornFile);
    CHECK(kind(R"({"hello":[)" + std::string(10U << 20U, ' ') + "]}") == core::Error::Kind::TooLarge);
    std::string foods = R"({"BrandedFoods": [)";
    for (int i = 1; i <= 1'024; ++i)
        foods += R"({"fdcId": )" + std::to_string(i) + "},";
    const auto preview = look(folder.write("long.json", foods + "torn behind the first ones"), folder);
    REQUIRE(preview);
    CHECK(std::get<ReleasePreview>(*preview).form == ReleasePreview::Form::Json);
}
