// The language by touches: on every screen the next one, drafts at the leader desk only, and back to the usual one.
#include "tests/kiosk/session/desk_station.h"

#include <doctest/doctest.h>

#include <set>
#include <string>

namespace test {

namespace {

using ui::ScreenId;
using ui::TextId;

std::string name_of(const std::string& code)
{
    const auto found = std::ranges::find(station_languages(), code, &ui::Language::code);
    REQUIRE(found != station_languages().end());
    return found->text(TextId::language_name);
}

/// The languages that the button leads through on this screen, from the one that is shown on.
std::set<std::string> round(Station& station)
{
    std::set<std::string> codes;
    const auto first = station.session.language().code();
    do {
        codes.insert(station.session.language().code());
        const auto promised = station.state().other_language;
        station.ask(ui::NextLanguage{});
        CHECK(station.session.language().text(TextId::language_name) == promised);
    } while (station.session.language().code() != first && codes.size() < 20);
    return codes;
}

/// A station at its desk, in the draft.
struct Drafted : DeskStation {
    Drafted()
    {
        touch(ui::OpenDesk{});
        for (int i = 0; i < 20 && !session.language().is_draft(); ++i)
            ask(ui::NextLanguage{});
        REQUIRE(session.language().code() == "vi");
    }
};

} // namespace

TEST_CASE("speaking: the desk offers every language, screens of shoppers only the whole ones")
{
    DeskStation station;
    const std::set<std::string> whole{"en", "es"};
    CHECK(round(station) == whole);
    station.touch(ui::OpenDesk{});
    CHECK(round(station) == std::set<std::string>{"en", "es", "vi"});
    station.touch(ui::LookForFiles{});
    CHECK(round(station).contains("vi"));
    station.ask(ui::GoBack{});
    station.ask(ui::GoBack{});
    REQUIRE(station.state().screen == ScreenId::Welcome);
    CHECK(round(station) == whole);
    station.scan(shelf::oats);
    CHECK(round(station) == whole);
    station.scan(shelf::wheat);
    CHECK(round(station) == whole);
    station.ask(ui::AskAccess{ui::OpenWays{}});
    CHECK(round(station) == whole);
}

TEST_CASE("speaking: the desk is worded in the draft, and whoever leaves it leaves the draft there")
{
    Drafted station;
    const auto& draft = station.session.language();
    CHECK(station.page().title == draft.text(TextId::desk_title));
    CHECK(station.page().title != station_languages().front().text(TextId::desk_title));

    SUBCASE("by going back")
    {
        station.ask(ui::GoBack{});
        CHECK(station.state().screen == ScreenId::Welcome);
    }
    SUBCASE("by starting over")
    {
        station.ask(ui::StartOver{});
        CHECK(station.state().screen == ScreenId::Welcome);
    }
    SUBCASE("by a scan, whose answer is for whoever holds the package")
    {
        station.scan(shelf::oats);
        CHECK(station.state().screen == ScreenId::OneLabel);
        CHECK(station.notice() == "Oat rounds is now on the left.");
    }
    SUBCASE("by a scan of a code without a label")
    {
        station.scan(shelf::nobody);
        CHECK(station.state().screen == ScreenId::NotFound);
        CHECK(station.notice() == "This station has no label for " + shelf::nobody + ".");
    }
    SUBCASE("by a scan of a code of two products")
    {
        station.scan(shelf::cookies_ean8);
        CHECK(station.state().screen == ScreenId::WhichProduct);
        CHECK(station.notice() == "Two products have this number. Which one is it?");
    }
    SUBCASE("by leaving it alone")
    {
        station.session.forget();
        CHECK(!station.session.in_use());
    }
    CHECK(station.session.language().code() == "en");
    CHECK(station.state().other_language == name_of("es"));
    station.touch(ui::OpenDesk{});
    CHECK(station.session.language().code() == "en");
}

TEST_CASE("speaking: who leaves the draft comes back to the language that the station began with")
{
    Drafted station;
    station.session.begin_with({"es", 100, ui::ThemeName::Paper});
    CHECK(station.session.language().code() == "es");
    station.ask(ui::NextLanguage{});
    REQUIRE(station.session.language().code() == "vi");
    station.ask(ui::GoBack{});
    CHECK(station.session.language().code() == "es");
}

TEST_CASE("speaking: the question whether somebody is there is asked in a whole language, and leads back to the draft")
{
    Drafted station;
    station.session.ask_whether_there(30);
    CHECK(station.session.language().code() == "en");
    station.ask(ui::AskAccess{ui::KeepGoing{}});
    CHECK(station.state().screen == ScreenId::Desk);
    CHECK(station.session.language().code() == "vi");
}

TEST_CASE("speaking: a draft is no language to begin with")
{
    Station station;
    station.session.begin_with({"vi", 100, ui::ThemeName::Paper});
    CHECK(station.session.language().code() == "en");
    station.session.set_language("vi");
    CHECK(station.session.language().code() == "en");
}

TEST_CASE("speaking: a language that could not be read is told on the screen")
{
    Station station;
    station.session.say_language_broken();
    CHECK(station.notice().starts_with("A language could not be read"));
}

} // namespace test
