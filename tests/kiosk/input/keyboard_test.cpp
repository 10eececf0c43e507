#include "kiosk/input/keyboard.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

namespace {

using kiosk::Keyboard;
using kiosk::Milliseconds;
using kiosk::Scan;
using kiosk::TimePoint;

SDL_Event key(Uint32 type, SDL_Scancode code)
{
    SDL_Event event{};
    event.type = type;
    event.key.keysym.scancode = code;
    return event;
}

SDL_Scancode digit_key(char digit)
{
    return digit == '0' ? SDL_SCANCODE_0 : static_cast<SDL_Scancode>(SDL_SCANCODE_1 + (digit - '1'));
}

/// A keyboard, what it handed on, and fingers or a scanner on it.
struct Desk {
    std::vector<std::pair<Uint32, SDL_Scancode>> screen;
    Keyboard keyboard{[this](const SDL_Event& event) { screen.emplace_back(event.type, event.key.keysym.scancode); }};
    TimePoint now{Milliseconds{1'000}};
    std::vector<Scan> scans;

    void press(SDL_Scancode code)
    {
        for (const auto& scan : keyboard.take(key(SDL_KEYDOWN, code), now, Milliseconds{0}))
            scans.push_back(scan);
    }
    void lift(SDL_Scancode code) { CHECK(keyboard.take(key(SDL_KEYUP, code), now, Milliseconds{0}).empty()); }
    void type(const std::string& digits, Milliseconds each)
    {
        for (const char digit : digits) {
            press(digit_key(digit));
            now += each;
            lift(digit_key(digit));
        }
    }
    void pause(Milliseconds length)
    {
        now += length;
        for (const auto& scan : keyboard.idle(now))
            scans.push_back(scan);
    }
};

const std::pair<Uint32, SDL_Scancode> tab_down{SDL_KEYDOWN, SDL_SCANCODE_TAB};
const std::pair<Uint32, SDL_Scancode> tab_up{SDL_KEYUP, SDL_SCANCODE_TAB};

} // namespace

TEST_CASE("keyboard: a scanner's keys become one scan and never reach the screen")
{
    Desk desk;
    desk.type("9520588008010", Milliseconds{1});
    desk.press(SDL_SCANCODE_RETURN);
    desk.lift(SDL_SCANCODE_RETURN);
    REQUIRE(desk.scans.size() == 1);
    CHECK(desk.scans[0].text == "9520588008010");
    desk.keyboard.frame_drawn();
    desk.pause(Milliseconds{1'000});
    CHECK(desk.screen.empty());
    CHECK(desk.scans.size() == 1);
}

TEST_CASE("keyboard: a scan without an end key is taken after a pause, and the next one is clean")
{
    Desk desk;
    desk.type("9520588008010", Milliseconds{1});
    CHECK(desk.keyboard.decides_at().has_value());
    desk.pause(Milliseconds{500});
    desk.type("9520427005019", Milliseconds{1});
    desk.pause(Milliseconds{500});
    REQUIRE(desk.scans.size() == 2);
    CHECK(desk.scans[1].text == "9520427005019");
    CHECK(desk.screen.empty());
    CHECK_FALSE(desk.keyboard.decides_at().has_value());
}

TEST_CASE("keyboard: a person's Tab reaches the screen, down first, up a frame later")
{
    Desk desk;
    desk.press(SDL_SCANCODE_TAB);
    desk.lift(SDL_SCANCODE_TAB);
    CHECK(desk.screen.empty()); // until it is clear that no other key follows at once
    desk.pause(Milliseconds{50});
    CHECK(desk.screen == std::vector{tab_down});
    CHECK(desk.keyboard.frame_drawn());
    CHECK(desk.screen == std::vector{tab_down, tab_up});
    CHECK_FALSE(desk.keyboard.frame_drawn());
}

TEST_CASE("keyboard: a person's digits reach the screen late but whole, each key up behind its key down")
{
    Desk desk;
    desk.type("12", Milliseconds{90});
    desk.pause(Milliseconds{500});
    desk.keyboard.frame_drawn();
    desk.keyboard.frame_drawn();
    CHECK(desk.scans.empty());
    int downs = 0;
    int ups = 0;
    for (const auto& [type, code] : desk.screen) {
        (type == SDL_KEYDOWN ? downs : ups)++;
        CHECK(ups <= downs);
    }
    CHECK(downs == 2);
    CHECK(ups == 2);
}

TEST_CASE("keyboard: a key that was down as part of a scan is not lifted on the screen")
{
    Desk desk;
    desk.type("9520588008010", Milliseconds{1});
    desk.press(SDL_SCANCODE_RETURN);
    desk.keyboard.frame_drawn();
    desk.lift(SDL_SCANCODE_RETURN);
    desk.keyboard.frame_drawn();
    CHECK(desk.screen.empty());
}

TEST_CASE("keyboard: a code of keys that work the screen reaches it with none of them, down or up")
{
    Desk desk;
    for (const auto code : {SDL_SCANCODE_TAB, SDL_SCANCODE_F2, SDL_SCANCODE_ESCAPE, SDL_SCANCODE_RETURN}) {
        desk.press(code);
        desk.now += Milliseconds{1};
        desk.lift(code);
    }
    desk.pause(Milliseconds{500});
    desk.keyboard.frame_drawn();
    CHECK(desk.screen.empty());
    REQUIRE(desk.scans.size() == 1);
    CHECK(desk.scans[0].text == "\t\x1a\x1b"); // a key without a character stands as SUB
}

TEST_CASE("keyboard: a key that is held down is told by the keyboard, and acts as long as it is")
{
    Desk desk;
    desk.press(SDL_SCANCODE_DOWN);
    desk.pause(Milliseconds{300});
    for (int i = 0; i < 3; ++i) {
        SDL_Event again = key(SDL_KEYDOWN, SDL_SCANCODE_DOWN);
        again.key.repeat = 1;
        CHECK(desk.keyboard.take(again, desk.now, Milliseconds{0}).empty());
        desk.now += Milliseconds{33};
    }
    CHECK(desk.screen.size() == 4);
    CHECK(desk.scans.empty());
}
