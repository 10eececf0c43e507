// Finding by name in a session: letters in, answers out of the real store, in portions that never stall the screen.
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
using Names = std::vector<std::string>;

/// Works the search off, and returns the names that are shown.
Names found(kiosk::Session& session)
{
    while (session.search_on([] { return true; })) {
    }
    Names names;
    for (const auto& one : session.state().found)
        names.push_back(one.name);
    return names;
}

void type(kiosk::Session& session, const std::string& letters)
{
    for (const char letter : letters)
        session.apply({ui::TypeLetters{std::string(1, letter)}});
}

/// A store of many like products, in a file.
catalog::Store long_store(const TempFolder& folder, std::size_t products)
{
    const auto path = folder.file("long");
    catalog::Store memory(":memory:");
    std::vector<core::Product> all;
    auto product = *small_store().find(core::Gtin::parse(shelf::oats).value());
    for (std::size_t i = 0; i < products; ++i) {
        const std::string body = std::to_string(952'000'100'000 + i);
        product.gtin = core::Gtin::parse(body + core::check_digit(body)).value();
        product.name = "Oat rounds " + std::to_string(1000 + i);
        all.push_back(product);
    }
    memory.put(all);
    memory.copy_to(path);
    return catalog::Store::open(path, catalog::Store::Mode::ReadOnly).value();
}

} // namespace

TEST_CASE("names: letters find products while they are typed, and one that is touched is a side of the pair")
{
    Station station;
    station.scan(shelf::rice);
    station.ask(ui::FindByName{});
    CHECK(station.state().screen == ScreenId::FindByName);
    CHECK(found(station.session).empty());
    CHECK(station.state().found_words.empty());
    type(station.session, "o");
    CHECK(station.state().typed == "O"); // as on the key
    CHECK(station.state().found_words == "Looking...");
    CHECK(found(station.session) == Names{"Oat rounds"});
    CHECK(station.state().found_words == "1 product");
    CHECK(station.state().found[0].detail == "Millbrook · serving 30 g");
    station.ask(ui::TakeProduct{station.state().found[0].gtin});
    CHECK(station.state().screen == ScreenId::Pair);
    CHECK(station.on(Side::Left) == "Rice puffs");
    CHECK(station.on(Side::Right) == "Oat rounds");
}

TEST_CASE("names: an aisle's Spanish name finds what stands there, whatever the screen's language")
{
    Station station;
    station.ask(ui::FindByName{});
    type(station.session, "cereales");
    CHECK(found(station.session) == Names{"Oat rounds", "Wheat squares"});
    type(station.session, " oat");
    CHECK(found(station.session) == Names{"Oat rounds"});
}

TEST_CASE("names: a word that no product has is left out and told as it was typed, until another letter comes")
{
    Station station;
    station.ask(ui::FindByName{});
    type(station.session, "cereales de ni");
    station.ask(ui::TypeLetters{"ñ"});
    type(station.session, "os");
    CHECK(station.state().found_words == "Looking...");
    CHECK(found(station.session) == Names{"Oat rounds", "Wheat squares"});
    CHECK(station.state().found_words == "No product here has the word “NIÑOS”. These have the rest.\n2 products");
    station.ask(ui::ClearLetters{});
    type(station.session, "cereales de");
    CHECK(found(station.session) == Names{"Oat rounds", "Wheat squares"});
    CHECK(station.state().found_words == "2 products");
}

TEST_CASE("names: letters are taken back one by one or all at once, and blanks are not heaped up")
{
    Station station;
    station.ask(ui::FindByName{});
    type(station.session, " pu");
    station.ask(ui::TypeLetters{"ñ"});
    CHECK(station.state().typed == "PUÑ"); // no name begins with a blank
    station.ask(ui::EraseLetter{});
    CHECK(station.state().typed == "PU"); // the whole letter, not one of its bytes
    CHECK(found(station.session) == Names{"Rice puffs"});
    type(station.session, "  ");
    CHECK(station.state().typed == "PU ");
    station.ask(ui::ClearLetters{});
    CHECK(station.state().typed.empty());
    CHECK(found(station.session).empty());
    CHECK(station.state().found_words.empty());
    station.ask(ui::EraseLetter{}); // there is nothing to take back
    CHECK(station.state().typed.empty());
    type(station.session, std::string(200, 'a'));
    CHECK(station.state().typed.size() == 60);
    CHECK(found(station.session).empty());
    CHECK(station.state().found_words == "No product has these words. Take letters away, or scan the package.");
}

TEST_CASE("names: back leads where one came from, and coming back shows what was typed; a new look begins anew")
{
    Station station;
    station.scan(shelf::rice);
    station.ask(ui::FindByName{});
    type(station.session, "oat");
    CHECK(found(station.session).size() == 1);
    station.ask(ui::FindByName{}); // By name is touched again: nothing is lost
    CHECK(station.state().typed == "OAT");
    station.ask(ui::TakeProduct{station.state().found[0].gtin});
    station.ask(ui::GoBack{});
    CHECK(station.state().screen == ScreenId::FindByName);
    CHECK(station.state().typed == "OAT");
    CHECK(found(station.session) == Names{"Oat rounds"});
    station.ask(ui::GoBack{});
    CHECK(station.state().screen == ScreenId::OneLabel);
    station.ask(ui::FindByName{});
    CHECK(station.state().typed.empty());
    CHECK(station.state().found.empty());
    type(station.session, "oat");
    station.ask(ui::StartOver{}); // nothing is kept about people
    CHECK(station.state().typed.empty());
    CHECK(station.state().found.empty());
}

TEST_CASE("names: a scan on this screen is a scan, and none of it comes into the name")
{
    Station station;
    station.ask(ui::FindByName{});
    type(station.session, "oa");
    station.scan(shelf::wheat);
    CHECK(station.on(Side::Left) == "Wheat squares");
    CHECK(station.state().screen == ScreenId::OneLabel);
    station.ask(ui::GoBack{});
    CHECK(station.state().screen == ScreenId::FindByName);
    CHECK(station.state().typed == "OA");
}

TEST_CASE("names: a portion is one step, and a letter more drops what was looked for before")
{
    const TempFolder folder;
    auto store = long_store(folder, 300);
    kiosk::Session session(store, station_languages());
    session.apply({ui::FindByName{}});
    type(session, "oat");
    int portions = 0;
    const auto none = [] { return false; };
    while (session.search_on(none) && session.state().found.size() < 3)
        ++portions;
    CHECK(portions > 3);
    CHECK(session.searching());
    CHECK(session.state().found.size() == 3); // one answer a portion at most
    session.apply({ui::TypeLetters{"zz"}});   // too many slips for anything here
    CHECK(session.state().found.empty());
    CHECK(found(session).empty());
    CHECK(!session.searching());
    session.apply({ui::EraseLetter{}, ui::EraseLetter{}});
    CHECK(found(session).size() == 60); // more than anyone turns pages for are counted, not shown
    CHECK(session.state().found_words == "The first 60 of 300 products");
    CHECK(session.state().found.front().name == "Oat rounds 1000");
    session.apply({ui::NextLanguage{}});
    CHECK(session.state().found_words == "Los primeros 60 de 300 productos");
    CHECK(session.state().found.front().detail == "Millbrook · porción 30 g");
}

TEST_CASE("names: nothing is searched while another screen is open, and the search goes on when one comes back")
{
    Station station;
    station.ask(ui::FindByName{});
    type(station.session, "oat");
    station.ask(ui::ChooseAisle{});
    CHECK(station.state().screen == ScreenId::PickAisle);
    CHECK(!station.session.searching());
    CHECK(!station.session.search_on([] { return true; }));
    station.ask(ui::GoBack{});
    CHECK(station.session.searching());
    CHECK(found(station.session) == Names{"Oat rounds"});
}

TEST_CASE("names: the catalog's words are read before the first letter comes, and nothing is found by that")
{
    Station station;
    station.ask(ui::FindByName{});
    CHECK(station.session.searching());
    CHECK(found(station.session).empty());
    CHECK(station.state().found_words.empty());
    CHECK(!station.session.searching());
}

TEST_CASE("names: between letters and aisles the way back does not grow")
{
    Station station;
    for (int i = 0; i < 5; ++i) {
        station.ask(ui::FindByName{});
        station.ask(ui::ChooseAisle{});
    }
    station.ask(ui::GoBack{});
    CHECK(station.state().screen == ScreenId::FindByName);
    station.ask(ui::GoBack{});
    CHECK(station.state().screen == ScreenId::Welcome);
}

TEST_CASE("names: aisles are offered where there are several and few enough products to leaf through")
{
    Station station;
    CHECK(station.state().by_aisle);
    const TempFolder folder;
    auto store = long_store(folder, 5'001);
    station.session.use(store);
    CHECK(!station.state().by_aisle);
    catalog::Store empty(":memory:");
    station.session.use(empty);
    CHECK(!station.state().by_aisle);
}

TEST_CASE("names: a catalog that was put in place is searched for what is typed, and the one before is let go")
{
    const TempFolder folder;
    auto newer = long_store(folder, 2);
    std::optional<catalog::Store> store = small_store();
    kiosk::Session session(*store, station_languages());
    session.apply({ui::FindByName{}});
    type(session, "oat");
    CHECK(found(session) == Names{"Oat rounds"});
    session.leave_catalog();
    store.reset(); // nothing holds it any more, or closing it would fail
    session.use(newer);
    CHECK(session.state().typed == "OAT");
    CHECK(found(session) == Names{"Oat rounds 1000", "Oat rounds 1001"});
}

TEST_CASE("names: a catalog that breaks under a search is told once, and typing goes on")
{
    const TempFolder folder;
    auto store = long_store(folder, 300);
    kiosk::Session session(store, station_languages());
    session.apply({ui::FindByName{}});
    type(session, "oat");
    const auto path = folder.file("long");
    const auto size = std::filesystem::file_size(path);
    std::ofstream(path, std::ios::binary | std::ios::in | std::ios::out) << std::string(size, '\xA5');
    for (const std::string typed : {"OAT", "OATS"}) {
        CHECK(session.state().typed == typed);
        CHECK_THROWS_AS(found(session), std::runtime_error);
        CHECK(!session.searching());
        CHECK(!session.search_on([] { return true; }));
        CHECK(session.state().found_words.empty()); // not looking any more
        session.apply({ui::TypeLetters{"s"}});
    }
}

} // namespace test
