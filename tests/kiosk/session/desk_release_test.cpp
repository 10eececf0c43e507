// A nation's labels at the leader desk, small: shown from the beginning of the files, loaded with a report, ended by a
// touch, broken off by a stick that is pulled out, taken back.
#include "tests/kiosk/session/desk_station.h"
#include "tests/support/release_maker.h"

#include <doctest/doctest.h>

#include <filesystem>
#include <string>

namespace {

namespace fs = std::filesystem;
using test::DeskStation;
using ui::ScreenId;
using ui::TextId;

const std::string name = "FoodData_Central_branded_food_csv_2026-04-30";

test::MadeRelease put_release(const DeskStation& station, std::size_t products)
{
    test::ReleaseShape shape;
    shape.products = products;
    return test::make_release(shape, fs::path(station.stick()) / name);
}

bool has_line(const ui::DeskPage& page, ui::DeskLine::Kind kind)
{
    return std::ranges::count(page.lines, kind, &ui::DeskLine::kind) > 0;
}

} // namespace

TEST_CASE("desk: a release is shown, loaded with what was taken and what was not, and taken back")
{
    DeskStation station;
    station.put("own.csv", test::two_rows);
    const auto made = put_release(station, 300);
    station.open("own.csv");
    station.touch(ui::LoadFile{false});
    REQUIRE(station.loaded() == 2);
    station.open(name);
    CHECK(station.lead().find("FoodData Central, branded foods, as a folder of CSV files.\nBy its name it is of "
                              "2026-04-30.\nIts columns are those of 2026.\nTo be read: ") != std::string::npos);
    CHECK(station.lead().ends_with("\nRecords: " + std::to_string(made.records) + "."));
    station.touch(ui::LoadFile{false});
    CHECK(station.lead().starts_with("Read: " + std::to_string(made.records) + " records and " +
                                     std::to_string(made.nutrient_rows) + " amounts.\n"));
    CHECK(station.lead().find("2 products that were in the catalog before stay as they were.") != std::string::npos);
    CHECK(has_line(station.page(), ui::DeskLine::Kind::Count));
    CHECK(has_line(station.page(), ui::DeskLine::Kind::Sample));
    CHECK(station.loaded() > 200);
    station.touch(ui::UndoLoad{});
    CHECK(station.loaded() == 2);
}

TEST_CASE("desk: a load of a release tells how far it is, and a touch ends it with all as it was")
{
    DeskStation station;
    (void)put_release(station, 18'000); // a load tells how far it is every 16,384 records
    station.open(name);
    station.ask(ui::AskDesk{ui::LoadFile{false}});
    REQUIRE(station.state().screen == ScreenId::DeskWork);
    CHECK(station.offers(TextId::desk_cancel));
    bool told = false;
    while (station.desk->busy() && !told) {
        (void)station.session.follow_desk();
        told = station.state().screen == ScreenId::DeskWork && station.page().percent.has_value();
    }
    REQUIRE(told);
    CHECK(station.page().lead[0] == name);
    CHECK(station.page().lead[1].find(" %") != std::string::npos);
    station.ask(ui::AskDesk{ui::CancelWork{}});
    station.wait();
    CHECK(station.lead() == "The load was ended. The catalog is as it was.");
    CHECK(!station.offers(TextId::desk_undo_load));
    CHECK(station.loaded() == 0);
    CHECK(!fs::exists(station.shop()));
}

TEST_CASE("desk: a stick pulled out while a release is loaded changes nothing, and gives one sentence")
{
    DeskStation station;
    (void)put_release(station, 300);
    station.open(name);
    fs::remove_all(station.stick());
    station.touch(ui::LoadFile{false});
    CHECK(station.lead() ==
          "The stick was pulled out, and nothing was changed. Put it in again and look for its files anew.");
    CHECK(station.loaded() == 0);
}

TEST_CASE("desk: the station can be closed while a load is running")
{
    DeskStation station;
    (void)put_release(station, 300);
    station.open(name);
    station.ask(ui::AskDesk{ui::LoadFile{false}});
    REQUIRE(station.desk->busy());
    station.desk.reset();
    const auto loaded = station.loaded(); // ended, or all of it where it was done already
    CHECK((loaded == 0 || loaded > 200));
    CHECK(!fs::exists(station.shop() + ".pairstand-new"));
}
