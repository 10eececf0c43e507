// Ways through the screens: back, by name, and what happens when the catalog changes or breaks.
#include "tests/kiosk/session/station.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <filesystem>
#include <fstream>
#include <stdexcept>

namespace test {
namespace {

using ui::ScreenId;
using ui::Side;

core::Gtin number(const std::string& digits)
{
    return core::Gtin::parse(digits).value();
}

/// Overwrites the whole file with nonsense, as a dying stick does.
void ruin(const std::string& path)
{
    const auto size = std::filesystem::file_size(path);
    std::ofstream file(path, std::ios::binary | std::ios::in | std::ios::out);
    file << std::string(size, '\xA5');
}

} // namespace

TEST_CASE("ways: back goes the way that was come, past steps that were only on the way")
{
    Station station;
    station.scan(shelf::oats);
    station.ask(ui::ChooseAisle{});
    station.ask(ui::OpenAisle{"Cereal"});
    CHECK(station.state().screen == ScreenId::PickProduct);
    REQUIRE(station.state().picks.size() == 2);
    station.ask(ui::TakeProduct{number(shelf::wheat)});
    REQUIRE(station.state().screen == ScreenId::Pair);
    station.ask(ui::OpenLabel{Side::Left});
    CHECK(station.state().screen == ScreenId::OneLabel);
    CHECK(station.state().label_side == Side::Left);
    station.ask(ui::GoBack{});
    CHECK(station.state().screen == ScreenId::Pair);
    station.ask(ui::GoBack{});
    CHECK(station.state().screen == ScreenId::PickAisle); // a list is a place; the page of one aisle is not
    station.ask(ui::GoBack{});
    CHECK(station.state().screen == ScreenId::OneLabel);
    station.ask(ui::GoBack{});
    CHECK(station.state().screen == ScreenId::Welcome);
    for (int more = 0; more < 3; ++more)
        station.ask(ui::GoBack{});
    CHECK(station.state().screen == ScreenId::Welcome);
    CHECK(station.on(Side::Right) == "Wheat squares"); // going back loses nothing
    station.ask(ui::ShowPair{});
    CHECK(station.state().screen == ScreenId::Pair);
}

TEST_CASE("ways: back from Not found is where the scan was made")
{
    Station station;
    station.scan(shelf::oats);
    station.scan(shelf::wheat);
    station.scan(shelf::nobody);
    station.scan(shelf::nobody);
    station.ask(ui::GoBack{});
    CHECK(station.state().screen == ScreenId::Pair);
}

TEST_CASE("ways: a long way back does not grow without end")
{
    Station station;
    station.scan(shelf::oats);
    station.scan(shelf::wheat);
    for (int i = 0; i < 1'000; ++i) {
        station.ask(ui::OpenLabel{Side::Left});
        station.ask(ui::ShowPair{});
    }
    int steps = 0;
    while (station.state().screen != ScreenId::Welcome && steps < 100) {
        station.ask(ui::GoBack{});
        ++steps;
    }
    CHECK(steps <= 20);
}

TEST_CASE("ways: the pair and a label are only shown when they are there")
{
    Station station;
    station.ask(ui::ShowPair{});
    station.ask(ui::OpenLabel{Side::Right});
    station.ask(ui::TakeBack{});
    CHECK(station.state().screen == ScreenId::Welcome);
    station.scan(shelf::oats);
    station.ask(ui::ShowPair{});
    CHECK(station.state().screen == ScreenId::OneLabel);
}

TEST_CASE("ways: choosing by name is a scan with a finger")
{
    Station station;
    station.ask(ui::ChooseAisle{});
    CHECK(station.state().screen == ScreenId::PickAisle);
    std::vector<std::string> aisles;
    for (const auto& aisle : station.state().aisles)
        aisles.push_back(aisle.words + ": " + aisle.count);
    CHECK(aisles == std::vector<std::string>{"Without an aisle: 1 product", "Cereal: 2 products", "Drinks: 1 product",
                                             "Snacks: 1 product"});
    station.ask(ui::OpenAisle{""});
    REQUIRE(station.state().picks.size() == 1);
    station.ask(ui::TakeProduct{station.state().picks[0].gtin});
    CHECK(station.on(Side::Left) == "Rice puffs");
    CHECK(station.notice() == "Rice puffs is now on the left.");
    station.ask(ui::TakeProduct{number(shelf::rice)});
    CHECK(station.notice() == "Rice puffs is already on the left.");
}

TEST_CASE("ways: another catalog is used from now on, also for what is on the sides")
{
    Station station;
    station.scan(shelf::oats);
    station.ask(ui::ChooseAisle{});
    auto newer = small_store("Birchwood");
    auto pear = *newer.find(number(shelf::oats));
    pear.gtin = number(shelf::nobody);
    pear.name = "Pear slices";
    pear.aisle = "Fruit";
    newer.put(pear);
    station.session.use(newer);
    CHECK(station.notice() == "The catalog was changed and is in use.");
    CHECK(station.state().aisles.size() == 5); // the open list is of the new one
    CHECK(station.state().sides[0]->product.brand == "Birchwood");
    station.scan(shelf::nobody);
    CHECK(station.on(Side::Right) == "Pear slices");
    station.scan(shelf::oats);
    CHECK(station.notice() == "Oat rounds is already on the left.");
}

TEST_CASE("ways: the station says whose labels it shows, in the language of the moment")
{
    test::Station station;
    CHECK(station.state().bundle.empty());
    station.session.shows(catalog::Manifest{"Cedar Hollow, winter", "Cedar Hollow Market", "2026-11-25", 7, 110, {}});
    CHECK(station.state().bundle == "Labels: “Cedar Hollow, winter”, made 2026-11-25 by Cedar Hollow Market.");
    station.ask(ui::NextLanguage{});
    CHECK(station.state().bundle == "Etiquetas: “Cedar Hollow, winter”, hechas 2026-11-25 por Cedar Hollow Market.");
    station.session.shows(std::nullopt);
    CHECK(station.state().bundle.empty());
}

TEST_CASE("ways: a pair on the screen shows the figures of the catalog that was put in place")
{
    Station station;
    station.scan(shelf::oats);
    station.scan(shelf::wheat);
    const auto before = station.state().pair;
    auto newer = small_store();
    auto oats = *newer.find(number(shelf::oats));
    oats.name = "Oat rounds, new recipe";
    newer.put(oats);
    station.session.use(newer);
    CHECK(station.state().screen == ScreenId::Pair);
    REQUIRE(station.state().pair.has_value());
    CHECK(station.state().pair->sides[0].name == "Oat rounds, new recipe");
    CHECK(station.state().pair->sides[1].name == before->sides[1].name);
    // What was put away is read again too.
    Station other;
    other.scan(shelf::oats);
    other.ask(ui::StartOver{});
    other.session.use(newer);
    other.ask(ui::TakeBack{});
    CHECK(other.on(Side::Left) == "Oat rounds, new recipe");
}

TEST_CASE("ways: what the new catalog does not have stays on its side as it was")
{
    Station station;
    station.scan(shelf::oats);
    catalog::Store empty(":memory:");
    station.session.use(empty);
    CHECK(station.on(Side::Left) == "Oat rounds");
    CHECK(station.state().label.has_value());
}

TEST_CASE("ways: a notice goes with the next touch, unless the touch brings its own")
{
    Station station;
    station.scan(shelf::oats);
    CHECK(station.notice() == "Oat rounds is now on the left.");
    const unsigned number = station.state().notice.number;
    station.ask(ui::TurnPage{1});
    CHECK(station.notice().empty());
    CHECK(station.state().notice.number == number); // nothing new to sound
    station.ask(ui::ToggleKeep{Side::Left});
    CHECK(!station.notice().empty());
}

TEST_CASE("ways: a product that the new catalog no longer has is not found")
{
    Station station;
    station.ask(ui::ChooseAisle{});
    station.ask(ui::OpenAisle{"Cereal"});
    catalog::Store empty(":memory:");
    station.session.use(empty);
    CHECK(station.state().screen == ScreenId::PickAisle);
    CHECK(station.state().aisles.empty());
    station.ask(ui::TakeProduct{number(shelf::oats)});
    CHECK(station.state().screen == ScreenId::NotFound);
    CHECK(station.notice() == "This station has no label for 09520000000011.");
}

TEST_CASE("ways: a catalog that breaks takes nothing with it")
{
    const TempFolder folder;
    const auto path = folder.file("shop");
    small_store().copy_to(path);
    auto store = catalog::Store::open(path, catalog::Store::Mode::ReadOnly).value();
    kiosk::Session session(store, station_languages());
    const auto scan = [&](const std::string& digits) {
        session.take({digits, core::Symbology::Unknown, kiosk::Scan::From::Scanner, {}});
    };
    scan(shelf::oats);
    scan(shelf::wheat);
    session.apply({ui::ChooseAisle{}});
    REQUIRE(session.state().screen == ScreenId::PickAisle);
    ruin(path);
    CHECK_THROWS_AS(scan(shelf::rice), std::runtime_error);
    CHECK_THROWS_AS(session.apply({ui::OpenAisle{"Cereal"}}), std::runtime_error);
    session.say_catalog_broken();
    CHECK(session.state().notice.tone == ui::Notice::Tone::Refused);
    CHECK(session.state().screen == ScreenId::PickAisle);
    CHECK(session.state().aisles.size() == 4);
    session.camera_is(kiosk::Session::Camera::Stalled); // nothing of this asks the catalog
    session.apply({ui::NextLanguage{}, ui::NextTextSize{}, ui::ShowPair{}, ui::ChooseBasis{core::Basis::SameAmount}});
    REQUIRE(session.state().comparison);
    CHECK(session.state().comparison->basis == core::Basis::SameAmount);
    CHECK(session.state().sides[0]->product.name == "Oat rounds");
    CHECK(session.state().sides[1]->product.name == "Wheat squares");
    session.apply({ui::StartOver{}, ui::TakeBack{}});
    CHECK(session.state().screen == ScreenId::Pair);
}

TEST_CASE("ways: the demo says that its products are invented")
{
    Station station;
    station.session.say_demo();
    CHECK(station.notice().find("made up") != std::string::npos);
}

} // namespace test
