// The bar: Back, Start over, Language, Text size and By name stand in one place, whatever the screen.
#include "tests/support/headless.h"
#include "tests/ui/samples.h"
#include "ui/parts/frame.h"
#include "ui/screens/screens.h"

#include <doctest/doctest.h>

#include <map>
#include <set>
#include <string>

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

TEST_CASE("frame: body, notice and bar lie below each other inside the window, also with a long notice")
{
    test::Headless screen;
    for (const bool long_notice : {false, true}) {
        auto state = test::state_of(ui::ScreenId::Welcome, test::language("en"));
        if (long_notice)
            for (int i = 0; i < 20; ++i)
                state.notice.words += "many words of a long notice ";
        screen.frame([&](const ui::Ui& ui, ui::Actions&) {
            const auto frame = ui::frame_of(ui, state);
            CHECK(frame.body.low.y >= 0);
            CHECK(frame.body.height() > 300);
            CHECK(frame.notice.low.y >= frame.body.high.y);
            CHECK(frame.bar.low.y >= frame.notice.high.y);
            CHECK(frame.bar.high.y <= 800);
        });
    }
}
