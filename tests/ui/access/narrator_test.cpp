#include "tests/support/headless.h"
#include "tests/ui/access/notes.h"
#include "ui/access/narrator.h"

#include <doctest/doctest.h>

#include <algorithm>

namespace {

using What = ui::VoiceOrder::What;

/// A narrator before a screen, with a voice that is finished with each sentence at once when asked.
struct Reading {
    ui::Notes notes = test::small_screen();
    ui::VoiceState voice{true};
    ui::Focus focus;
    ui::Narrator narrator;
    std::string notice;
    unsigned notices = 0;
    int screen = 1;

    void frame()
    {
        focus.settle(notes, screen);
        narrator.follow(voice, heard(), focus);
    }
    [[nodiscard]] ui::Heard heard() const { return {notes, test::language("en"), notice, notices, screen}; }

    /// What is said until nothing more comes.
    std::vector<std::string> listen()
    {
        std::vector<std::string> said;
        for (bool more = true; more;) {
            more = false;
            for (const auto& order : narrator.orders())
                if (order.what == What::Say) {
                    said.push_back(order.utterance.words);
                    narrator.spoken(order.utterance.id);
                    more = true;
                }
        }
        return said;
    }
};

using Said = std::vector<std::string>;

} // namespace

TEST_CASE("narrator: silent until asked")
{
    Reading reading;
    reading.frame();
    reading.notice = "Found";
    reading.notices = 1;
    reading.screen = 2;
    reading.frame();
    CHECK(reading.narrator.orders().empty());
}

TEST_CASE("narrator: reads a screen to its end, a row in one piece, and says what is a button")
{
    Reading reading;
    reading.frame();
    reading.voice.mode = ui::VoiceMode::Reading;
    ++reading.voice.begun;
    reading.frame();
    CHECK(reading.listen() ==
          Said{"Heading", "One, button", "Two, button", "Sodium, 190 milligrams, button", "Last, button"});
    CHECK(reading.narrator.read_to_the_end());
}

TEST_CASE("narrator: long words go by sentence, and the last one again when asked")
{
    Reading reading;
    reading.notes = {test::note_at("First one. Second one? Third", 0, 0, false)};
    reading.frame();
    reading.voice.mode = ui::VoiceMode::Reading;
    ++reading.voice.begun;
    reading.frame();
    auto orders = reading.narrator.orders();
    REQUIRE(orders.size() == 1);
    CHECK(orders[0].utterance.words == "First one.");
    CHECK(reading.narrator.note_spoken() == std::optional<std::size_t>{0});
    reading.narrator.spoken(orders[0].utterance.id);
    orders = reading.narrator.orders();
    REQUIRE(orders.size() == 1);
    CHECK(orders[0].utterance.words == "Second one?");
    ++reading.voice.again;
    reading.frame();
    CHECK(reading.listen() == Said{"Second one?", "Third"});
}

TEST_CASE("narrator: pauses, goes on, and is silent when it is stopped")
{
    Reading reading;
    reading.frame();
    reading.voice.mode = ui::VoiceMode::Reading;
    ++reading.voice.begun;
    reading.frame();
    static_cast<void>(reading.narrator.orders());
    reading.voice.paused = true;
    reading.frame();
    CHECK(reading.narrator.orders() == std::vector<ui::VoiceOrder>{{What::Pause}});
    reading.voice.paused = false;
    reading.frame();
    CHECK(reading.narrator.orders() == std::vector<ui::VoiceOrder>{{What::GoOn}});
    reading.voice.mode = ui::VoiceMode::Off;
    reading.frame();
    CHECK(reading.narrator.orders() == std::vector<ui::VoiceOrder>{{What::Hush}});
    CHECK_FALSE(reading.narrator.note_spoken());
}

TEST_CASE("narrator: stopped in a pause, the next words are heard all the same")
{
    Reading reading;
    reading.frame();
    reading.voice = {true, ui::VoiceMode::Reading, true};
    ++reading.voice.begun;
    reading.frame();
    reading.voice = {true, ui::VoiceMode::Off, false};
    static_cast<void>(reading.narrator.orders());
    reading.frame();
    CHECK(reading.narrator.orders().front() == ui::VoiceOrder{What::GoOn});
}

TEST_CASE("narrator: a page that was turned in a pause is read, not the one before")
{
    Reading reading;
    reading.frame();
    reading.voice.mode = ui::VoiceMode::Reading;
    ++reading.voice.begun;
    reading.frame();
    reading.voice.paused = true;
    reading.frame();
    reading.notes = {test::note_at("Second page", 0, 0, false)};
    reading.screen = 2;
    reading.frame();
    reading.voice.paused = false;
    static_cast<void>(reading.narrator.orders());
    reading.frame();
    CHECK(reading.listen() == Said{"Second page"});
}

TEST_CASE("narrator: figures that change while they are read are read anew")
{
    Reading reading;
    reading.notes = {test::note_at("One serving", 0, 0, false), test::note_at("100", 1, 0, false)};
    reading.frame();
    reading.voice.mode = ui::VoiceMode::Reading;
    ++reading.voice.begun;
    reading.frame();
    static_cast<void>(reading.narrator.orders());
    reading.notes[1].words = "300";
    reading.frame();
    CHECK(reading.listen() == Said{"One serving", "300"});
    reading.notes[1].words = "400"; // nothing is being read any more
    reading.frame();
    CHECK(reading.listen().empty());
}

TEST_CASE("narrator: an answer cuts off what is being read; an utterance that was cut off brings nothing on")
{
    Reading reading;
    reading.frame();
    reading.voice.mode = ui::VoiceMode::Reading;
    ++reading.voice.begun;
    reading.frame();
    const unsigned cut = reading.narrator.orders().back().utterance.id;
    reading.notice = "Oats is now on the left.";
    ++reading.notices;
    reading.screen = 2;
    reading.frame();
    auto orders = reading.narrator.orders();
    REQUIRE(orders.size() == 2);
    CHECK(orders[0].what == What::Hush);
    CHECK(orders[1].utterance.words == "Oats is now on the left.");
    reading.narrator.spoken(cut);
    CHECK(reading.narrator.orders().empty());
}

TEST_CASE("narrator: the voice alone says how it is worked, then the first words; keys bring the others")
{
    Reading reading;
    reading.frame();
    reading.voice.mode = ui::VoiceMode::Only;
    reading.frame();
    auto said = reading.listen();
    REQUIRE(said.size() > 2);
    CHECK(said.front() == "The voice is on.");
    CHECK(said.back() == "Heading");
    reading.focus.move(ui::Move::Next, ui::StopsAt::Everything);
    reading.narrator.moved(reading.voice, reading.heard(), reading.focus);
    CHECK(reading.listen() == Said{"One, button"});
    reading.notes[1].chosen = true; // it was pressed
    reading.frame();
    CHECK(reading.listen() == Said{"One, button, chosen"});
    reading.frame();
    CHECK(reading.listen().empty());
    reading.notice = "Done.";
    ++reading.notices;
    reading.frame();
    CHECK(reading.listen() == Said{"Done."});
}

TEST_CASE("narrator: who cannot see hears what is a heading, who is read to does not")
{
    const ui::Notes notes{{"Less of", ui::Role::Heading, std::nullopt, {0, 0}, {100, 30}, false, 24}};
    const ui::Stop stop{.note = 0};
    CHECK(ui::sentences_of(stop, notes, test::language("en"), ui::Headings::Said) == Said{"Less of, heading"});
    CHECK(ui::sentences_of(stop, notes, test::language("es"), ui::Headings::Said) == Said{"Less of, título"});
    CHECK(ui::sentences_of(stop, notes, test::language("en")) == Said{"Less of"});
    Reading reading;
    reading.notes.front().role = ui::Role::Heading;
    reading.frame();
    reading.voice.mode = ui::VoiceMode::Only;
    ++reading.voice.begun;
    reading.frame();
    const auto said = reading.listen();
    CHECK(std::ranges::count(said, "Heading, heading") == 1);
}

TEST_CASE("narrator: an answer is said once, not again with every screen that comes after it")
{
    Reading reading;
    reading.voice.mode = ui::VoiceMode::Only;
    reading.frame();
    reading.listen();
    reading.notice = "Oats is now on the left.";
    ++reading.notices;
    reading.screen = 2;
    reading.frame();
    CHECK(reading.listen().front() == "Oats is now on the left.");
    reading.screen = 3;
    reading.frame();
    const auto said = reading.listen();
    REQUIRE(!said.empty());
    CHECK(said.front() == "Heading");
}
