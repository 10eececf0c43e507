// A product without its package at hand: found by letters on the real window, until it stands in a pair.
#include "tests/end_to_end/demo.h"
#include "tests/end_to_end/station.h"
#include "tests/end_to_end/twin.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <thread>

namespace {

using std::chrono::milliseconds;
using ui::TextId;

/// Touches what is meant, asks the twin for the same, and waits until the station says the same words.
void touch(test::Station& station, test::Twin& twin, const test::IsIt& what, const ui::Action& action)
{
    station.touch(twin.place_of(what), milliseconds(40));
    twin.ask({action});
    const bool same = test::says(station, twin.words());
    CAPTURE(twin.words());
    CAPTURE(station.trace().back().words);
    REQUIRE(same);
}

void touch_letters(test::Station& station, test::Twin& twin, const std::string& letters)
{
    for (const char letter : letters)
        touch(station, twin, test::named(std::string(1, letter)), ui::TypeLetters{std::string(1, letter)});
}

void take(test::Station& station, test::Twin& twin, const std::string& name)
{
    const auto& all = twin.state().found;
    const auto found = std::ranges::find(all, name, &ui::PickEntry::name);
    REQUIRE(found != all.end());
    touch(station, twin, test::named(name), ui::TakeProduct{found->gtin});
}

} // namespace

TEST_CASE("end to end: two names touched letter by letter are a pair")
{
    test::Station station;
    test::Twin twin;
    twin.ask({});
    touch(station, twin, test::text(TextId::button_choose_by_name), ui::FindByName{});
    touch_letters(station, twin, "TORTILLAX");
    touch(station, twin, test::text(TextId::keypad_erase), ui::EraseLetter{});
    take(station, twin, "Tortilla chips, yellow corn");
    CHECK(twin.state().screen == ui::ScreenId::OneLabel);
    touch(station, twin, test::text(TextId::button_by_name), ui::FindByName{});
    touch_letters(station, twin, "SALTED");
    touch(station, twin, test::text(TextId::find_space), ui::TypeLetters{" "});
    touch_letters(station, twin, "P");
    take(station, twin, "Potato chips, salted");
    CHECK(twin.state().screen == ui::ScreenId::Pair);
    const auto last = station.trace().back();
    CHECK(last.screen == "pair");
    CHECK(last.left == "09520366004012");
    CHECK(last.right == "09520366004029");
}

TEST_CASE("end to end: a keyboard types the name too, and what a scanner types never comes into it")
{
    const auto products = test::demo_products();
    test::Station station;
    test::Twin twin;
    twin.ask({});
    touch(station, twin, test::text(TextId::button_by_name), ui::FindByName{});
    for (const std::string letter : {"c", "h", "i"}) {
        station.press({letter});
        std::this_thread::sleep_for(milliseconds(150)); // a person's pause
    }
    twin.ask({ui::TypeLetters{"chi"}});
    CHECK(test::says(station, twin.words()));
    station.press({"BackSpace"});
    twin.ask({ui::EraseLetter{}});
    CHECK(test::says(station, twin.words()));
    station.scan(products[0].digits);
    REQUIRE(station.answer(1));
    CHECK(station.answer(1)->left == products[0].gtin);
    twin.scan(products[0].digits);
    touch(station, twin, test::text(TextId::button_back), ui::GoBack{});
    CHECK(twin.state().typed == "CH");
}
