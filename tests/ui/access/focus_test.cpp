#include "tests/ui/access/notes.h"
#include "ui/access/focus.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <vector>

namespace {

using ui::Move;
using ui::StopsAt;

std::string at(const ui::Focus& focus, const ui::Notes& notes)
{
    return focus.at() ? notes[focus.at()->note].words : "";
}

} // namespace

TEST_CASE("focus: Tab shows it first, then goes round all that can be touched; back is the same way back")
{
    const auto notes = test::small_screen();
    ui::Focus focus;
    focus.settle(notes, 1);
    CHECK_FALSE(focus.shown());
    std::vector<std::string> seen;
    for (int i = 0; i < 5; ++i) {
        focus.move(Move::Next, StopsAt::Touchable);
        seen.push_back(at(focus, notes));
    }
    CHECK(seen == std::vector<std::string>{"One", "Two", "Sodium", "Last", "One"});
    focus.move(Move::Previous, StopsAt::Touchable);
    CHECK(at(focus, notes) == "Last");
    focus.move(Move::First, StopsAt::Everything);
    CHECK(at(focus, notes) == "Heading");
    focus.move(Move::Last, StopsAt::Touchable);
    CHECK(at(focus, notes) == "Last");
}

TEST_CASE("focus: arrows follow the eye, and stay where nothing lies that way")
{
    struct Case {
        std::string from;
        Move move;
        std::string to;
    };
    const Case cases[] = {{"One", Move::Right, "Two"},   {"Two", Move::Left, "One"},     {"One", Move::Down, "Sodium"},
                          {"Two", Move::Down, "Sodium"}, {"Sodium", Move::Down, "Last"}, {"Last", Move::Up, "Sodium"},
                          {"Two", Move::Right, "Two"},   {"Last", Move::Down, "Last"},   {"One", Move::Up, "One"}};
    const auto notes = test::small_screen();
    for (const auto& c : cases) {
        CAPTURE(c.from);
        CAPTURE(c.to);
        ui::Focus focus;
        focus.settle(notes, 1);
        do {
            focus.move(Move::Next, StopsAt::Touchable);
        } while (at(focus, notes) != c.from);
        focus.move(c.move, StopsAt::Touchable);
        CHECK(at(focus, notes) == c.to);
    }
}

TEST_CASE("focus: from everywhere Next comes to everything, so that nothing traps it")
{
    const auto notes = test::small_screen();
    for (std::size_t start = 0; start < 5; ++start) {
        ui::Focus focus;
        focus.settle(notes, 1);
        focus.move(Move::First, StopsAt::Everything);
        for (std::size_t i = 0; i < start; ++i)
            focus.move(Move::Next, StopsAt::Everything);
        std::vector<std::string> seen;
        for (int i = 0; i < 5; ++i) {
            seen.push_back(at(focus, notes));
            focus.move(Move::Next, StopsAt::Everything);
        }
        std::ranges::sort(seen);
        CHECK(seen == std::vector<std::string>{"Heading", "Last", "One", "Sodium", "Two"});
    }
}

TEST_CASE("focus: stays with its words when others come or go before it, and begins anew on another screen")
{
    auto notes = test::small_screen();
    ui::Focus focus;
    focus.settle(notes, 1);
    for (int i = 0; i < 4; ++i)
        focus.move(Move::Next, StopsAt::Touchable);
    REQUIRE(at(focus, notes) == "Last");
    notes.insert(notes.begin(), test::note_at("New", 3, 0, true));
    focus.settle(notes, 1);
    CHECK(at(focus, notes) == "Last");
    notes.pop_back(); // it is gone: as near as can be
    focus.settle(notes, 1);
    CHECK(at(focus, notes) == "Sodium");
    focus.settle(notes, 2);
    CHECK(at(focus, notes) == "New");
}

TEST_CASE("focus: a button whose words change keeps it")
{
    const auto id = ui::TextId::button_text_size;
    ui::Notes notes{test::note_at("A", 0, 0, true), test::note_at("100%", 1, 0, true, id)};
    ui::Focus focus;
    focus.settle(notes, 1);
    focus.move(Move::Next, StopsAt::Touchable);
    focus.move(Move::Next, StopsAt::Touchable);
    notes[1].words = "150%";
    notes.insert(notes.begin(), test::note_at("B", 2, 0, true));
    focus.settle(notes, 1);
    CHECK(at(focus, notes) == "150%");
}

TEST_CASE("focus: a press acts once, in the next frame, and only on what was meant")
{
    const auto notes = test::small_screen();
    ui::Focus focus;
    focus.settle(notes, 1);
    focus.press(); // hidden: nobody knows what it would press
    CHECK_FALSE(focus.takes_press(1, "One"));
    focus.move(Move::Next, StopsAt::Touchable);
    focus.press();
    CHECK_FALSE(focus.takes_press(2, "Two"));
    CHECK_FALSE(focus.takes_press(1, "Another screen came between"));
    CHECK(focus.takes_press(1, "One"));
    CHECK_FALSE(focus.takes_press(1, "One"));
    focus.press();
    focus.settle(notes, 1);
    CHECK_FALSE(focus.takes_press(1, "One"));
}

TEST_CASE("focus: a text cannot be pressed, and a screen without anything has no focus")
{
    const auto notes = test::small_screen();
    ui::Focus focus;
    focus.settle(notes, 1);
    focus.move(Move::First, StopsAt::Everything);
    focus.press();
    CHECK_FALSE(focus.takes_press(0, "Heading"));
    focus.settle({}, 2);
    focus.move(Move::Next, StopsAt::Everything);
    focus.press();
    CHECK(focus.at() == nullptr);
}
