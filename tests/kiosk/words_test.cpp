// What words mean, by taps and by the voice: from a figure, from one label, and back to where one read.
#include "tests/kiosk/walk.h"
#include "ui/words/what_is.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

namespace {

using core::Nutrient;
using ui::ScreenId;
using ui::TextId;

/// A station with a finger: what is touched is found by what it says.
struct Finger {
    test::Station station;
    test::Headless screen{{1280, 800}, 100, "en"};

    [[nodiscard]] const ui::State& state() const { return station.state(); }
    void touch(TextId id, std::size_t nth = 0) { station.session.apply(screen.tap(state(), id, nth)); }
    bool shows(TextId id)
    {
        screen.frame(state());
        return std::ranges::any_of(screen.notes(), [id](const ui::Note& note) { return note.id == id; });
    }
    /// Turns pages until it is there; false where it is on none.
    bool turn_to(TextId id)
    {
        while (!shows(id)) {
            if (!shows(TextId::button_page_next))
                return false;
            touch(TextId::button_page_next);
        }
        return true;
    }
};

bool explains(const ui::State& state, const std::string& word)
{
    return std::ranges::any_of(state.words, [&](const ui::Meaning& meaning) { return meaning.word == word; });
}

} // namespace

TEST_CASE("words: a touched nutrient of a pair says first of all what it is")
{
    Finger finger;
    finger.station.scan(test::shelf::oats);
    finger.station.scan(test::shelf::wheat);
    REQUIRE(finger.state().screen == ScreenId::Pair);
    finger.touch(TextId::why_hint, 1); // behind calories
    REQUIRE(finger.state().screen == ScreenId::Why);
    REQUIRE(finger.state().why_of->nutrient == Nutrient::TotalFat);
    finger.screen.frame(finger.state());
    const auto& notes = finger.screen.notes();
    CHECK(notes.at(0).words == "Total fat: where this comes from");
    CHECK(notes.at(1).words == "What is this? This is all the fat in the food, of every kind.");
    finger.touch(TextId::language_name);
    CHECK(finger.state().why->what == "¿Qué es esto? Es toda la grasa del alimento, de cualquier clase.");
}

TEST_CASE("words: each line of one label says what it is, and so do its sizes")
{
    Finger finger;
    finger.station.scan(test::shelf::oats);
    const auto what = [&](std::optional<Nutrient> nutrient) {
        finger.station.ask(ui::OpenWhy{nutrient, ui::Side::Left});
        return finger.state().why->what;
    };
    const auto& en = test::language("en");
    CHECK(what(std::nullopt) == ui::what_is_this(en.text(TextId::what_serving_size), en));
    for (const auto& known : core::nutrients())
        CHECK(what(known.nutrient) == ui::what_is_this(ui::what_is(known.nutrient, en), en));
}

TEST_CASE("words: from one label to what its words mean, and back to the page that was read")
{
    Finger finger;
    finger.station.scan(test::shelf::oats);
    REQUIRE(finger.state().screen == ScreenId::OneLabel);
    REQUIRE(finger.turn_to(TextId::button_words));
    const int page = finger.state().page;
    finger.touch(TextId::button_words);
    REQUIRE(finger.state().screen == ScreenId::Words);
    CHECK(finger.state().page == 0);
    CHECK(explains(finger.state(), "Serving size"));
    CHECK(explains(finger.state(), "Total fat"));
    CHECK_FALSE(explains(finger.state(), "Zinc"));
    CHECK(finger.shows(TextId::button_back));
    finger.touch(TextId::language_name);
    CHECK(explains(finger.state(), "Grasa total"));
    finger.touch(TextId::button_back);
    CHECK(finger.state().screen == ScreenId::OneLabel);
    CHECK(finger.state().page == page);
    CHECK(finger.state().words.empty());
}

TEST_CASE("words: whoever looked up words of a step on the way goes on with that step")
{
    struct Case {
        std::string why;
        ui::Action step;
        ScreenId screen;
        std::string word;
    };
    const Case cases[] = {
        {"a figure", ui::OpenWhy{Nutrient::TotalFat, std::nullopt}, ScreenId::Why, "CFR"},
        {"prices", ui::OpenPrices{}, ScreenId::Prices, "Unit price"},
        {"amounts", ui::OpenAmounts{}, ScreenId::Amounts, "Serving size"},
        {"the group", ui::AskAccess{ui::OpenGroupView{}}, ScreenId::GroupView, "Total fat"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        Finger finger;
        finger.station.scan(test::shelf::oats);
        finger.station.scan(test::shelf::wheat);
        finger.station.ask(c.step);
        REQUIRE(finger.turn_to(TextId::button_words));
        finger.touch(TextId::button_words);
        REQUIRE(finger.state().screen == ScreenId::Words);
        CHECK(explains(finger.state(), c.word));
        finger.touch(TextId::button_back);
        CHECK(finger.state().screen == c.screen);
        finger.touch(TextId::button_back);
        CHECK(finger.state().screen == ScreenId::Pair);
    }
    Finger finger;
    finger.touch(TextId::button_words); // on Welcome: all words
    CHECK(explains(finger.state(), "Zinc"));
    finger.touch(TextId::button_back);
    CHECK(finger.state().screen == ScreenId::Welcome);
    finger.station.scan(test::shelf::nobody);
    REQUIRE(finger.turn_to(TextId::button_words));
    finger.touch(TextId::button_words);
    CHECK(explains(finger.state(), "% Daily Value"));
    finger.touch(TextId::button_back);
    CHECK(finger.state().screen == ScreenId::NotFound);
}

TEST_CASE("words: by the voice alone, what a figure is and what the words mean is heard")
{
    test::Walk walk;
    walk.press(SDLK_F2);
    walk.scan(test::shelf::oats);
    walk.scan(test::shelf::wheat);
    bool found = walk.go_to("Total fat");
    for (int page = 0; page < 20 && !found; ++page) {
        walk.press(SDLK_PAGEDOWN);
        found = walk.go_to("Total fat");
    }
    REQUIRE(found);
    walk.press(SDLK_RETURN);
    REQUIRE(walk.station.state().screen == ScreenId::Why);
    CHECK(walk.go_to("This is all the fat in the food"));
    found = walk.go_to("What do these words mean? button");
    for (int page = 0; page < 20 && !found; ++page) {
        walk.press(SDLK_PAGEDOWN);
        found = walk.go_to("What do these words mean? button");
    }
    REQUIRE(found);
    walk.press(SDLK_RETURN);
    REQUIRE(walk.station.state().screen == ScreenId::Words);
    CHECK(walk.go_to("This is what people tend to eat or drink at one time"));
    walk.press(SDLK_ESCAPE);
    CHECK(walk.station.state().screen == ScreenId::Why);
}

TEST_CASE("words: with one switch, the way to what words mean is one of the lines that light up")
{
    test::Walk walk;
    walk.scan(test::shelf::nobody); // a screen of one page
    const auto stops = walk.guide().access().focus.stops();
    CHECK(std::ranges::any_of(
        stops, [&](const ui::Stop& stop) { return walk.notes().at(stop.note).id == TextId::button_words; }));
}
