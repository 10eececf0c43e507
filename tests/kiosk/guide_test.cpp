// Every way through the station without a finger: by keys, by one switch, and by the voice alone.
#include "tests/kiosk/walk.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <set>

namespace {

using ui::ScreenId;

bool says(const test::Walk& walk, const std::string& words)
{
    return std::ranges::any_of(walk.said_now, [&](const std::string& said) { return said.find(words) != said.npos; });
}

} // namespace

TEST_CASE("guide: by the voice alone from Welcome to a pair and its findings, in both languages")
{
    struct Case {
        std::string language;
        std::string how;
        std::string title;
        std::string row;
        std::string voice;
    };
    const Case cases[] = {{"en", "arrow keys", "Two labels, side by side", "Total fat", "en-us"},
                          {"es", "flechas", "Dos etiquetas", "Grasa total", "es-419"}};
    for (const auto& c : cases) {
        CAPTURE(c.language);
        test::Walk walk(c.language);
        CHECK(walk.said_now.empty());
        walk.press(SDLK_F2);
        CHECK(says(walk, c.how));
        CHECK(says(walk, c.title));
        walk.scan(test::shelf::oats);
        CHECK(walk.station.state().screen == ScreenId::OneLabel);
        CHECK_FALSE(walk.said_now.empty());
        walk.scan(test::shelf::wheat);
        CHECK(walk.station.state().screen == ScreenId::Pair);
        // On whichever page it is, the fat of both sides is said with its sides and its finding.
        bool found = walk.go_to(c.row);
        for (int page = 0; page < 20 && !found; ++page) {
            walk.press(SDLK_PAGEDOWN);
            found = walk.go_to(c.row);
        }
        REQUIRE(found);
        CHECK(says(walk, walk.station.session.language().text(ui::TextId::left)));
        walk.press(SDLK_RETURN); // it opens to where it comes from
        CHECK(walk.station.state().screen == ScreenId::Why);
        CHECK_FALSE(walk.said_now.empty());
        walk.press(SDLK_ESCAPE);
        CHECK(walk.station.state().screen == ScreenId::Pair);
        CHECK(std::set<std::string>(walk.voices.begin(), walk.voices.end()) == std::set<std::string>{c.voice});
    }
}

TEST_CASE("guide: by the voice alone every thing of every shopper screen is spoken and can be come to")
{
    test::Walk walk;
    walk.press(SDLK_F2);
    walk.scan(test::shelf::oats);
    walk.scan(test::shelf::wheat);
    for (const auto screen :
         {ScreenId::Welcome, ScreenId::OneLabel, ScreenId::Pair, ScreenId::FindByName, ScreenId::Ways, ScreenId::Words,
          ScreenId::GroupView, ScreenId::Prices, ScreenId::Amounts}) {
        CAPTURE(static_cast<int>(screen));
        if (screen == ScreenId::Amounts)
            walk.station.session.apply({ui::ShowPair{}, ui::OpenAmounts{}});
        else
            walk.station.session.show(screen);
        walk.press(SDLK_HOME);
        std::set<std::size_t> come_to;
        for (int i = 0; i < 120; ++i) {
            if (const auto* at = walk.guide().access().focus.at())
                come_to.insert(at->note);
            CHECK_FALSE(walk.said_now.empty());
            walk.press(SDLK_DOWN);
        }
        CHECK(come_to.size() == walk.guide().access().focus.stops().size());
    }
}

TEST_CASE("guide: which product the camera sees is asked and answered by keys and voice")
{
    test::Walk walk;
    walk.press(SDLK_F2);
    walk.doubt({test::shelf::oats, test::shelf::wheat});
    CHECK(says(walk, "Is it one of these?"));
    REQUIRE(walk.go_to("Wheat squares"));
    walk.press(SDLK_RETURN);
    CHECK(walk.station.on(ui::Side::Left) == "Wheat squares");
    CHECK(says(walk, "Wheat squares is now on the left."));
    walk.doubt({test::shelf::rice});
    CHECK(says(walk, "Is it this one?"));
    REQUIRE(walk.go_to("No, it is another one"));
    walk.press(SDLK_RETURN);
    CHECK(walk.station.state().screen == ScreenId::OneLabel);
    CHECK(walk.station.on(ui::Side::Right).empty());
}

TEST_CASE("guide: a name is found by keys and voice")
{
    test::Walk walk;
    walk.press(SDLK_F2);
    REQUIRE(walk.go_to("Choose by name"));
    walk.press(SDLK_RETURN);
    CHECK(walk.station.state().screen == ScreenId::FindByName);
    REQUIRE(walk.go_to("O, button"));
    walk.press(SDLK_RETURN);
    CHECK(walk.station.state().typed == "O");
    while (walk.station.session.search_on([] { return true; })) {
    }
    walk.press(SDLK_F3);
    CHECK_FALSE(walk.said_now.empty());
}

TEST_CASE("guide: the keys of the voice work from anywhere")
{
    test::Walk walk;
    walk.press(SDLK_F2);
    walk.press(SDLK_F3);
    CHECK(walk.said_now == std::vector<std::string>{walk.said_now.front()});
    walk.press(SDLK_F6);
    CHECK(walk.station.state().voice.rate_percent > ui::usual_rate);
    walk.press(SDLK_F5);
    CHECK(walk.station.state().voice.rate_percent == ui::usual_rate);
    for (int i = 0; i < 9; ++i)
        walk.press(SDLK_F8);
    CHECK(walk.station.state().voice.volume == ui::most_volume);
    CHECK(walk.volumes.back() == ui::most_volume);
    walk.press(SDLK_F7);
    CHECK(walk.station.state().voice.volume == ui::most_volume - 1);
    walk.press(SDLK_F4);
    CHECK(walk.station.state().voice.paused);
    walk.press(SDLK_DOWN); // who goes on wants to hear where they are
    CHECK_FALSE(walk.station.state().voice.paused);
    walk.station.session.forget(); // the next person hears it as usual
    CHECK(walk.station.state().voice.volume == ui::usual_volume);
    CHECK(walk.station.state().voice.mode == ui::VoiceMode::Off);
}

TEST_CASE("guide: Tab and Enter alone lead from Welcome to a label, and focus changes nothing by itself")
{
    test::Walk walk;
    walk.scan(test::shelf::oats);
    walk.press(SDLK_ESCAPE);
    const auto before = walk.station.state().screen;
    std::set<std::string> words;
    for (int i = 0; i < 40; ++i) {
        walk.press(SDLK_TAB);
        CHECK(walk.station.state().screen == before);
        words.insert(walk.notes()[walk.guide().access().focus.at()->note].words);
    }
    CHECK(words.size() > 4);
    CHECK(walk.said_now.empty()); // nobody asked to be read to
    while (walk.notes()[walk.guide().access().focus.at()->note].id != ui::TextId::button_open_label)
        walk.press(SDLK_TAB, KMOD_SHIFT);
    walk.press(SDLK_RETURN);
    CHECK(walk.station.state().screen == ScreenId::OneLabel);
}

TEST_CASE("guide: one switch begins, enters a line and chooses in it")
{
    test::Walk walk;
    walk.press(SDLK_SPACE);
    CHECK(walk.guide().access().scan.on());
    const auto lit = [&walk] {
        const auto stops = walk.guide().access().focus.stops();
        std::vector<std::string> words;
        for (const auto at : walk.guide().access().scan.lit(stops))
            words.push_back(walk.notes()[stops[at].note].words);
        return words;
    };
    int waits = 0;
    while (std::ranges::count(lit(), "Choose by name") == 0 && ++waits < 20)
        walk.wait_for_switch();
    walk.press(SDLK_SPACE);
    while (lit() != std::vector<std::string>{"Choose by name"} && ++waits < 60)
        walk.wait_for_switch();
    walk.press(SDLK_SPACE);
    CHECK(walk.station.state().screen == ScreenId::FindByName);
    walk.guide().finger(); // a finger ends it
    CHECK_FALSE(walk.guide().access().scan.on());
}

TEST_CASE("guide: Page Down ends at the last page")
{
    test::Walk walk;
    walk.scan(test::shelf::oats);
    for (int i = 0; i < 30; ++i)
        walk.press(SDLK_PAGEDOWN);
    const int last = walk.station.state().page;
    CHECK(last < 10);
    if (last > 0) {
        walk.press(SDLK_PAGEUP);
        CHECK(walk.station.state().page == last - 1);
    }
}

TEST_CASE("guide: a held key is one press")
{
    test::Walk walk;
    SDL_Keysym blank{};
    blank.sym = SDLK_SPACE;
    CHECK(walk.guide().press(blank, false, {}));
    for (int i = 0; i < 5; ++i)
        CHECK(walk.guide().press(blank, true, {}));
    CHECK(walk.guide().access().scan.lit(walk.guide().access().focus.stops()).size() >= 1);
    CHECK(walk.guide().asked().empty());
}

TEST_CASE("guide: who asks for the voice where there is none is told so")
{
    test::Walk walk;
    walk.station.session.voice_is(false);
    walk.press(SDLK_F2);
    CHECK(walk.station.state().voice.mode == ui::VoiceMode::Off);
    CHECK(walk.station.state().notice.words == "This station has no loudspeaker now.");
}

TEST_CASE("guide: by the voice alone the camera's hints are told, each once and not too fast")
{
    using kiosk::Hint;
    using kiosk::Milliseconds;
    test::Walk walk;
    walk.camera(Hint::Closer, Milliseconds{5000});
    CHECK(walk.said_now.empty()); // who sees the picture reads them
    walk.press(SDLK_F2);
    walk.camera(Hint::Aim, Milliseconds{5000});
    CHECK(walk.said_now.empty()); // nothing to do
    walk.camera(Hint::Closer, Milliseconds{5000});
    CHECK(says(walk, "Closer"));
    walk.camera(Hint::Closer, Milliseconds{5000});
    CHECK(walk.said_now.empty());
    walk.camera(Hint::HoldStill, Milliseconds{5000});
    CHECK(says(walk, "Hold still"));
    walk.camera(Hint::Closer, Milliseconds{1000});
    CHECK(walk.said_now.empty()); // a second after the one before
    walk.camera(Hint::Closer, Milliseconds{3500});
    CHECK(says(walk, "Closer"));
    walk.camera(Hint::Aim, Milliseconds{1000});
    walk.camera(Hint::Closer, Milliseconds{5000}); // the next package
    CHECK(says(walk, "Closer"));
}
