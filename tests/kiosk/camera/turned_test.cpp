#include "kiosk/camera/turned.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using kiosk::Turn;
using kiosk::turned;

namespace {

/// Letters as grey levels, with two bytes of stride that must not be read.
std::string turned_letters(Turn turn)
{
    const std::string letters = "abc__def__"; // abc over def
    const kiosk::GreyView view{reinterpret_cast<const std::uint8_t*>(letters.data()), 3, 2, 5};
    const auto frame = turned(view, turn);
    std::string out;
    for (int y = 0; y < frame.height; ++y)
        out += std::string(frame.pixels.begin() + frame.width * y, frame.pixels.begin() + frame.width * (y + 1)) + " ";
    return out;
}

} // namespace

TEST_CASE("turned: by quarters, and with left and right swapped first")
{
    struct Case {
        Turn turn;
        const char* letters;
    };
    const Case cases[] = {
        {{0, false}, "abc def "},   {{1, false}, "da eb fc "}, {{2, false}, "fed cba "}, {{3, false}, "cf be ad "},
        {{0, true}, "cba fed "},    {{1, true}, "fc eb da "},  {{2, true}, "def abc "},  {{3, true}, "ad be cf "},
        {{-1, false}, "cf be ad "}, {{6, false}, "fed cba "},
    };
    for (const auto& c : cases) {
        CAPTURE(c.turn.quarters);
        CAPTURE(c.turn.swap);
        CHECK(turned_letters(c.turn) == c.letters);
    }
}

TEST_CASE("turned: a quarter and three more bring a large picture back")
{
    kiosk::Frame frame;
    frame.width = 101; // no multiple of the squares in which it is copied
    frame.height = 67;
    for (int i = 0; i < frame.width * frame.height; ++i)
        frame.pixels.push_back(static_cast<std::uint8_t>(i % 251));
    for (const bool swap : {false, true}) {
        const auto there = turned(frame.view(), {1, swap});
        CHECK(there.width == 67);
        const auto back = turned(there.view(), {swap ? 1 : 3, swap}); // a swap and a quarter undo themselves
        CHECK(back.pixels == frame.pixels);
    }
}
