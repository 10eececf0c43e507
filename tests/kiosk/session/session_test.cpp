// What a person at the station gets for scans and touches, from the first package on.
#include "tests/kiosk/session/station.h"

#include <doctest/doctest.h>

#include <algorithm>

namespace test {
namespace {

using ui::ScreenId;
using ui::Side;

} // namespace

TEST_CASE("session: the first scan goes left, the second right, and the pair is ready")
{
    Station station;
    CHECK(station.state().screen == ScreenId::Welcome);
    station.scan(shelf::oats);
    CHECK(station.on(Side::Left) == "Oat rounds");
    CHECK(station.on(Side::Right).empty());
    CHECK(station.state().screen == ScreenId::OneLabel);
    CHECK(station.notice() == "Oat rounds is now on the left.");
    CHECK(station.state().newest == Side::Left);
    REQUIRE(station.state().label);
    CHECK_FALSE(station.state().comparison);
    station.scan(shelf::wheat);
    CHECK(station.on(Side::Left) == "Oat rounds");
    CHECK(station.on(Side::Right) == "Wheat squares");
    CHECK(station.state().screen == ScreenId::Pair);
    CHECK(station.notice() == "Wheat squares is now on the right.");
    CHECK(station.state().newest == Side::Right);
    REQUIRE(station.state().comparison);
    CHECK(station.state().comparison->rows.size() == 2);
    REQUIRE(station.state().pair);
}

TEST_CASE("session: the third scan replaces the older side, and so on by turns")
{
    Station station;
    station.scan(shelf::oats);
    station.scan(shelf::wheat);
    station.scan(shelf::rice);
    CHECK(station.on(Side::Left) == "Rice puffs");
    CHECK(station.on(Side::Right) == "Wheat squares");
    station.scan(shelf::oats);
    CHECK(station.on(Side::Left) == "Rice puffs");
    CHECK(station.on(Side::Right) == "Oat rounds");
    CHECK(station.state().screen == ScreenId::Pair);
}

TEST_CASE("session: a kept side stays, and both kept says so")
{
    Station station;
    station.scan(shelf::oats);
    station.scan(shelf::wheat);
    station.ask(ui::ToggleKeep{Side::Left});
    CHECK(station.notice() == "Oat rounds stays when the next package is scanned.");
    station.scan(shelf::rice);
    CHECK(station.on(Side::Left) == "Oat rounds");
    CHECK(station.on(Side::Right) == "Rice puffs");
    station.scan(shelf::wheat);
    CHECK(station.on(Side::Right) == "Wheat squares"); // the kept one is the older one for good
    station.ask(ui::ToggleKeep{Side::Right});
    station.scan(shelf::rice);
    CHECK(station.notice() == "Both sides are kept. Let one go first.");
    CHECK(station.state().notice.tone == ui::Notice::Tone::Refused);
    CHECK(station.on(Side::Left) == "Oat rounds");
    CHECK(station.on(Side::Right) == "Wheat squares");
    CHECK(station.state().screen == ScreenId::Pair);
    station.ask(ui::ToggleKeep{Side::Left});
    CHECK(station.notice() == "Oat rounds may be replaced by the next package.");
    station.scan(shelf::rice);
    CHECK(station.on(Side::Left) == "Rice puffs");
    CHECK_FALSE(station.state().sides[0]->kept); // the newcomer is not kept because the last one was
}

TEST_CASE("session: an empty side cannot be kept")
{
    Station station;
    station.ask(ui::ToggleKeep{Side::Right});
    CHECK(station.notice().empty());
    CHECK_FALSE(station.state().sides[1]);
}

TEST_CASE("session: the same product again is already there and never fills both sides")
{
    Station station;
    station.scan(shelf::oats);
    const unsigned first = station.state().notice.number;
    for (int again = 0; again < 3; ++again)
        station.scan(shelf::oats);
    CHECK(station.notice() == "Oat rounds is already on the left.");
    CHECK(station.state().notice.number == first + 3); // each scan is answered, also by the same words
    CHECK(station.on(Side::Right).empty());
    station.scan("0" + shelf::oats); // the same number as a GTIN-14
    CHECK(station.on(Side::Right).empty());
    station.scan(shelf::wheat);
    station.scan(shelf::oats);
    CHECK(station.notice() == "Oat rounds is already on the left.");
    CHECK(station.state().screen == ScreenId::Pair);
    station.scan(shelf::wheat);
    CHECK(station.notice() == "Wheat squares is already on the right.");
}

TEST_CASE("session: start over empties both sides and can be taken back")
{
    Station station;
    station.scan(shelf::oats);
    station.scan(shelf::wheat);
    station.ask(ui::ChooseBasis{core::Basis::Package});
    CHECK_FALSE(station.state().can_take_back);
    station.ask(ui::StartOver{});
    CHECK(station.on(Side::Left).empty());
    CHECK(station.on(Side::Right).empty());
    CHECK(station.state().screen == ScreenId::Welcome);
    CHECK(station.state().basis == core::Basis::Serving);
    CHECK_FALSE(station.state().pair);
    CHECK_FALSE(station.state().label);
    CHECK(station.state().can_take_back);
    station.ask(ui::StartOver{}); // a second touch does not lose what the first put away
    station.ask(ui::TakeBack{});
    CHECK(station.on(Side::Left) == "Oat rounds");
    CHECK(station.on(Side::Right) == "Wheat squares");
    CHECK(station.state().basis == core::Basis::Package);
    CHECK(station.state().screen == ScreenId::Pair);
    CHECK_FALSE(station.state().can_take_back);
    REQUIRE(station.state().comparison);
    CHECK(station.state().comparison->basis == core::Basis::Package);
    station.scan(shelf::rice); // which side is the older one came back too
    CHECK(station.on(Side::Left) == "Rice puffs");
}

TEST_CASE("session: a new package after start over is a new beginning")
{
    Station station;
    station.scan(shelf::oats);
    station.ask(ui::StartOver{});
    station.scan(shelf::wheat);
    CHECK(station.on(Side::Left) == "Wheat squares");
    CHECK_FALSE(station.state().can_take_back);
    station.ask(ui::TakeBack{});
    CHECK(station.on(Side::Left) == "Wheat squares");
    CHECK(station.on(Side::Right).empty());
}

TEST_CASE("session: one side alone is taken back to its label")
{
    Station station;
    station.scan(shelf::oats);
    station.ask(ui::StartOver{});
    station.ask(ui::TakeBack{});
    CHECK(station.state().screen == ScreenId::OneLabel);
    REQUIRE(station.state().label);
}

TEST_CASE("session: another basis compares again and keeps the page")
{
    Station station;
    station.scan(shelf::oats);
    station.scan(shelf::wheat);
    station.ask(ui::TurnPage{1});
    REQUIRE(station.state().page == 1);
    for (const auto basis : {core::Basis::Package, core::Basis::SameAmount, core::Basis::Serving}) {
        station.ask(ui::ChooseBasis{basis});
        CHECK(station.state().comparison->basis == basis);
        CHECK(station.state().page == 1);
        CHECK(station.state().screen == ScreenId::Pair);
    }
    station.ask(ui::ChooseBasis{core::Basis::Package});
    station.scan(shelf::rice);
    CHECK(station.state().basis == core::Basis::Package); // a class that looks at packages goes on doing so
    CHECK(station.state().page == 0);
    station.ask(ui::TurnPage{-1});
    CHECK(station.state().page == 0);
}

TEST_CASE("session: the language switch words everything again")
{
    Station station;
    station.scan(shelf::oats);
    station.scan(shelf::wheat);
    const auto english = station.state().pair->rows.front().name;
    const auto label_heading = station.state().other_language;
    station.session.camera_is(kiosk::Session::Camera::None);
    const auto reader = station.state().reader;
    station.ask(ui::NextLanguage{});
    CHECK(station.session.language().code() == "es");
    CHECK(station.state().pair->rows.front().name != english);
    CHECK(station.state().other_language != label_heading);
    CHECK(station.state().reader != reader);
    CHECK(station.notice().empty()); // it was in the other language
    CHECK(station.state().screen == ScreenId::Pair);
    station.scan(shelf::rice);
    CHECK(station.notice().find("Rice puffs") == 0);
    CHECK(station.notice().find("is now") == std::string::npos);
    const auto drafts = std::ranges::count_if(station_languages(), &ui::Language::is_draft);
    for (std::size_t i = 1; i + static_cast<std::size_t>(drafts) < station_languages().size(); ++i)
        station.ask(ui::NextLanguage{});
    CHECK(station.session.language().code() == "en");
    CHECK(station.state().pair->rows.front().name == english);
}

TEST_CASE("session: aisles are worded again in another language")
{
    Station station;
    station.ask(ui::ChooseAisle{});
    REQUIRE(station.state().aisles.size() == 4);
    const auto before = station.state().aisles;
    station.ask(ui::NextLanguage{});
    CHECK(station.state().aisles[0].aisle == before[0].aisle);
    CHECK(station.state().aisles[0].words != before[0].words); // the nameless one
    CHECK(station.state().aisles[1].count != before[1].count);
}

TEST_CASE("session: text size goes round and an unknown one changes nothing")
{
    Station station;
    const int first = station.state().text_percent;
    std::vector<int> sizes;
    do {
        sizes.push_back(station.state().text_percent);
        station.ask(ui::NextTextSize{});
    } while (station.state().text_percent != first && sizes.size() < 20);
    CHECK(sizes == std::vector<int>{100, 150, 200, 300});
    station.session.set_text_percent(317);
    CHECK(station.state().text_percent == first);
}

TEST_CASE("session: settings take a known language and ignore an unknown one")
{
    Station station;
    station.session.set_language("es");
    CHECK(station.session.language().code() == "es");
    station.session.set_language("xx");
    CHECK(station.session.language().code() == "es");
}

TEST_CASE("session: what the leader chose holds for every comparison and every label")
{
    auto store = small_store();
    kiosk::Settings settings;
    settings.choices.aims = core::AimList::Label2016; // total fat has no aim there
    settings.choices.first = {core::Nutrient::TotalFat};
    kiosk::Session session(store, station_languages(), settings);
    for (const auto& code : {shelf::oats, shelf::wheat})
        session.take({code, core::Symbology::Unknown, kiosk::Scan::From::Scanner, {}});
    REQUIRE(session.state().pair);
    const auto& rows = session.state().pair->rows;
    const auto fat = std::ranges::find(rows, core::Nutrient::TotalFat, &ui::RowWords::nutrient);
    REQUIRE(fat != rows.end());
    CHECK(fat->first);
    CHECK(fat->aim == core::Aim::Neither);
}

TEST_CASE("session: says which lines of the settings could not be used, and where the file could not be read")
{
    const auto said = [](std::vector<std::size_t> lines) {
        Station station;
        station.session.say_settings_broken(lines);
        return station.state().notice.words;
    };
    CHECK(said({}) == "The settings file could not be read. The usual values hold for now.");
    CHECK(said({3}) == "Line 3 of the settings file could not be used and is left out.");
    CHECK(said({3, 5, 9}) == "Lines 3, 5, 9 of the settings file could not be used and are left out.");
    CHECK(said({1, 2, 3, 4, 5, 6}) ==
          "Lines 1, 2, 3, 4, 5 and others of the settings file could not be used and are left out.");
}

} // namespace test
