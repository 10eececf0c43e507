// The bar: Back, Start over, Language, Text size and By name stand in one place, whatever the screen.
#include "tests/support/headless.h"
#include "tests/support/mouse_compat.h"
#include "tests/ui/samples.h"
#include "ui/parts/frame.h"
#include "ui/screens/screens.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cfloat>
#include <map>
#include <set>
#include <string>
#include <utility>

namespace {

using ui::TextId;

const std::set<TextId> bar{TextId::language_name,      TextId::button_text_size, TextId::button_by_name,
                           TextId::button_start_over,  TextId::button_take_back, TextId::button_back,
                           TextId::button_page_before, TextId::button_page_next};

struct Seen {
    ImVec2 low;
    ImVec2 high;
    std::string on; ///< the screen that it was first seen on
};

void check_bar(const test::Headless& screen, const std::string& name, std::map<TextId, Seen>& seen)
{
    for (const auto& note : screen.notes()) {
        if (!note.id || !bar.contains(*note.id))
            continue;
        const auto& first = seen.try_emplace(*note.id, Seen{note.low, note.high, name}).first->second;
        const bool same = first.low.x == note.low.x && first.low.y == note.low.y && first.high.x == note.high.x &&
                          first.high.y == note.high.y;
        if (!same)
            FAIL_CHECK(note.words, " stands elsewhere on ", name, " than on ", first.on, ": ", note.low.x, ",",
                       note.low.y, " and ", first.low.x, ",", first.low.y);
    }
}

} // namespace

TEST_CASE("frame: every button of the bar stands in the same place on every screen")
{
    for (const ImVec2 size : {ImVec2{1280, 800}, ImVec2{1920, 1080}, ImVec2{800, 1280}})
        for (const int percent : {100, 200}) {
            if (PAIRSTAND_ONE_IN > 1 && (!(size.x < size.y) || percent != 200))
                continue; // the one with the most rows
            test::Headless screen(size, percent);
            for (const std::string code : {"en", "es"}) {
                CAPTURE(size.x);
                CAPTURE(percent);
                CAPTURE(code);
                const auto& language = test::language(code);
                std::map<TextId, Seen> seen;
                for (auto& [name, state] : test::hard_states(language))
                    for (const int page : {0, 1}) {
                        state.page = page;
                        screen.frame([&, &shown = state](const ui::Ui& ui, ui::Actions& asked) {
                            ui::draw({language, ui.look, ui.notes}, shown, asked);
                        });
                        check_bar(screen, name, seen);
                    }
                CHECK(seen.size() == bar.size());
                CHECK(seen.at(TextId::button_take_back).low.x == seen.at(TextId::button_start_over).low.x);
            }
        }
}

TEST_CASE("frame: the other language is one touch away on every screen")
{
    const auto& english = test::language("en");
    auto states = test::hard_states(english);
    for (auto& more : {test::access_states(english), test::group_states(english)})
        states.insert(states.end(), more.begin(), more.end());
    std::set<ui::ScreenId> screens;
    test::Headless screen;
    for (const auto& [name, state] : states) {
        screen.frame(state);
        screens.insert(state.screen);
        const auto offered = std::ranges::count_if(screen.notes(), [](const auto& note) {
            return note.id == TextId::language_name && note.touchable && note.words == "Español";
        });
        if (offered != 1)
            FAIL_CHECK(name, " offers the other language ", offered, " times");
    }
    for (const auto& known : ui::screens())
        if (!screens.contains(known.id) && known.id != ui::ScreenId::Gallery) // which people never see
            FAIL_CHECK(known.name, " was not looked at");
}

namespace {

/// Puts a finger on that very place and lifts it, whatever stands there.
ui::Actions tap_at(test::Headless& screen, const ui::State& state, ImVec2 at)
{
    screen.frame(state);
    screen.frame(state);
    ui::Actions all;
    for (const bool down : {false, true, false}) {
        test::put_finger(at, down);
        for (const auto& action : screen.frame(state))
            all.push_back(action);
    }
    test::put_finger({-FLT_MAX, -FLT_MAX}, false);
    screen.frame(state);
    return all;
}

const ui::Note& note_of(const test::Headless& screen, TextId id)
{
    const auto found = std::ranges::find(screen.notes(), id, &ui::Note::id);
    REQUIRE(found != screen.notes().end());
    return *found;
}

/// Four taps on one place, each on a screen of the size that the one before asked for.
void tap_round(ImVec2 size, const std::string& code, ui::State state)
{
    ImVec2 at{0, 0};
    for (const int percent : ui::text_percents) {
        CAPTURE(percent);
        test::Headless screen(size, percent, code);
        CHECK(state.text_percent == percent);
        screen.frame(state);
        const auto& note = note_of(screen, TextId::button_text_size);
        CHECK(note.words.find(std::to_string(percent) + "%") != std::string::npos);
        if (percent == 100)
            at = {(note.low.x + note.high.x) / 2, (note.low.y + note.high.y) / 2};
        CHECK(tap_at(screen, state, at) == ui::Actions{ui::NextTextSize{}});
        state.text_percent = ui::next_text_percent(state.text_percent);
    }
    CHECK(state.text_percent == 100);
}

} // namespace

TEST_CASE("frame: a finger that taps on one place goes round all text sizes")
{
    for (const ImVec2 size : {ImVec2{1280, 800}, ImVec2{1920, 1080}, ImVec2{800, 1280}})
        for (const std::string code : {"en", "es"}) {
            CAPTURE(size.x);
            CAPTURE(code);
            const auto& language = test::language(code);
            const auto& strands = test::demo_product("9520141001120");
            const auto& granola = test::demo_product("9520208001131");
            tap_round(size, code, test::state_of(ui::ScreenId::Welcome, language));
            tap_round(size, code, test::label_state(strands, language));
            tap_round(size, code, test::pair_state(strands, granola, core::Basis::Serving, language));
        }
}

TEST_CASE("frame: neither the letters nor the aisles leave a hole in the bar: By name leads from both to the letters")
{
    test::Headless screen;
    const auto letters = test::state_of(ui::ScreenId::FindByName, test::language("en"));
    CHECK(screen.tap(letters, TextId::button_by_name) == ui::Actions{ui::FindByName{}});
    const auto state = test::aisles_state(test::language("en"));
    CHECK(screen.tap(state, TextId::button_by_name) == ui::Actions{ui::FindByName{}});
}

TEST_CASE("frame: what is said of the two sides moves nothing when it comes and goes")
{
    for (const ImVec2 size : {ImVec2{1280, 800}, ImVec2{800, 1280}})
        for (const int percent : ui::text_percents) {
            CAPTURE(size.x);
            CAPTURE(percent);
            test::Headless screen(size, percent);
            auto state = test::pair_state(test::demo_product("9520427005033"), test::demo_product("9520427005088"),
                                          core::Basis::Serving, test::language("en"));
            REQUIRE(!state.notice.words.empty());
            screen.frame([&](const ui::Ui& ui, ui::Actions&) {
                const auto said = ui::frame_of(ui, state).body;
                state.notice.words.clear();
                const auto quiet = ui::frame_of(ui, state).body;
                CHECK(said.high.y == quiet.high.y);
            });
        }
}

TEST_CASE("frame: body, notice and bar lie below each other inside the window, also with a long notice")
{
    for (const auto& [at, long_notice] : {std::pair{100, false}, {100, true}, {200, false}}) {
        const int percent = at;
        test::Headless screen({1280, 800}, percent);
        auto state = test::state_of(ui::ScreenId::Welcome, test::language("en"));
        if (long_notice)
            for (int i = 0; i < 20; ++i)
                state.notice.words += "many words of a long notice ";
        screen.frame([&](const ui::Ui& ui, ui::Actions&) {
            const auto frame = ui::frame_of(ui, state);
            CHECK(frame.body.low.y >= 0);
            CHECK(frame.body.height() > 300);
            CHECK(frame.notice.low.y >= frame.body.high.y);
            CHECK(frame.rule <= frame.bar.low.y);
            const bool beside = frame.notice.high.y > frame.bar.low.y; // the page buttons, at large letters
            CHECK(beside == (percent == 200));
            CHECK(frame.bar.high.y <= 800);
        });
    }
}

TEST_CASE("frame: the page is told in the room that it has, also where there are a hundred and more")
{
    for (const auto& [pages, told] : {std::pair{99, "98 of 99"}, {100, "98"}, {1200, "1098"}}) {
        test::Headless screen({800, 1280}, 200);
        const auto state = test::state_of(ui::ScreenId::Pair, test::language("en"));
        const ui::Paging paging{pages, pages == 1200 ? 1097 : 97};
        screen.frame([&](const ui::Ui& ui, ui::Actions& asked) {
            ui::close_frame(ui, state, ui::frame_of(ui, state), paging, asked);
        });
        const auto& told_pages = pages;
        CAPTURE(told_pages);
        CHECK(screen.says(told));
    }
}
