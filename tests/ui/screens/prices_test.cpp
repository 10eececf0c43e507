// The screen on which shelf prices are typed.
#include "tests/support/headless.h"
#include "tests/ui/samples.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

using ui::Side;
using ui::TextId;

namespace {

ui::State prices(const std::string& code = "en")
{
    const auto& left = test::demo_product("9520141001052"); // 18 oz
    const auto& right = test::demo_product("520417001099"); // 12 oz
    return test::prices_state(left, core::cents(399), right, std::nullopt, test::language(code));
}

} // namespace

TEST_CASE("prices screen: both fields, ten digits, and what a touch of each asks for")
{
    test::Headless screen;
    const auto state = prices();
    screen.frame(state);
    CHECK(screen.says("Left: Corn flakes"));
    CHECK(screen.says("$3.99"));
    CHECK(screen.says("$0.00"));
    for (int digit = 0; digit < 10; ++digit)
        CHECK(screen.tap(state, std::to_string(digit)) == ui::Actions{ui::TypePriceDigit{digit}});
    CHECK(screen.tap(state, TextId::keypad_erase) == ui::Actions{ui::ErasePriceDigit{}});
    CHECK(screen.tap(state, TextId::keypad_clear) == ui::Actions{ui::ClearPrice{}});
    CHECK(screen.tap(state, TextId::side_left) == ui::Actions{ui::PickPriceSide{Side::Left}});
    CHECK(screen.tap(state, TextId::side_right) == ui::Actions{ui::PickPriceSide{Side::Right}});
    CHECK(screen.tap(state, TextId::button_prices_done) == ui::Actions{ui::ShowPair{}});
}

TEST_CASE("prices screen: every key is large enough for a finger and on the first page, in every size")
{
    // 15 mm at 96 dpi are 57 px: EN 301 549 asks for less, a stand is touched in passing (common practice).
    for (const auto size : {ImVec2{1280, 800}, ImVec2{800, 1280}, ImVec2{1920, 1080}})
        for (const int percent : {100, 150, 200, 300})
            for (const std::string code : {"en", "es"}) {
                CAPTURE(size.x);
                CAPTURE(percent);
                CAPTURE(code);
                test::Headless screen(size, percent, code);
                screen.frame(prices(code));
                int keys = 0;
                for (const auto& note : screen.notes()) {
                    CHECK_FALSE(note.cut);
                    const bool digit = note.words.size() == 1 && note.words[0] >= '0' && note.words[0] <= '9';
                    const bool word = note.id == TextId::keypad_erase || note.id == TextId::keypad_clear ||
                                      note.id == TextId::button_prices_done;
                    if (!note.touchable || (!digit && !word))
                        continue;
                    ++keys;
                    CHECK(note.high.x - note.low.x >= 64);
                    CHECK(note.high.y - note.low.y >= 64);
                }
                CHECK(keys == 13);
            }
}

TEST_CASE("prices screen: the pair leads there, from the page on which the rows end")
{
    test::Headless screen;
    auto state = prices();
    state.screen = ui::ScreenId::Pair;
    for (state.page = 0; state.page < 12; ++state.page) {
        screen.frame(state);
        const auto& notes = screen.notes();
        if (std::ranges::any_of(notes, [](const auto& note) { return note.id == TextId::button_prices; }))
            break;
    }
    REQUIRE(state.page < 12);
    CHECK(screen.tap(state, TextId::button_prices) == ui::Actions{ui::OpenPrices{}});
}
