// The question which product the camera sees: its words, its answers, and what one page of it holds.
#include "tests/support/headless.h"
#include "tests/ui/samples.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

namespace {

using ui::TextId;

const std::vector<std::string> four{"9520141001120", "9520208001131", "9520777012026", "9520427005033"};

} // namespace

TEST_CASE("likely product: asks, says why, names each with its brand and size, and every touch is an answer")
{
    test::Headless screen;
    const auto state = test::likely_state(four, test::language("en"));
    screen.frame(state);
    std::string wanted = "Is it one of these?\nThe camera sees the bars, but not well enough to be sure. "
                         "Look at the name on the package.\n";
    for (const auto& likely : state.likely)
        wanted += likely.name + "\n" + likely.name + "\n" + likely.detail + "\n"; // the row to touch, then its words
    CHECK(screen.words().starts_with(wanted + "None of these\n"));
    CHECK(screen.says(state.notice.words));
    for (const auto& likely : state.likely) {
        CAPTURE(likely.name);
        CHECK(likely.detail.find(" · ") != std::string::npos);
        CHECK(screen.tap(state, likely.name) == ui::Actions{ui::TakeProduct{likely.gtin}});
    }
    CHECK(screen.tap(state, TextId::likely_none) == ui::Actions{ui::GoBack{}});
}

TEST_CASE("likely product: one product alone is asked about as one, in both languages")
{
    struct Case {
        std::string language, title, no;
    };
    const Case cases[] = {{"en", "Is it this one?\n", "No, it is another one"}, {"es", "¿Es este?\n", "No, es otro"}};
    for (const auto& c : cases) {
        test::Headless screen({1280, 800}, 100, c.language);
        const auto state = test::likely_state({four[0]}, test::language(c.language));
        screen.frame(state);
        CHECK(screen.words().starts_with(c.title));
        CHECK(screen.tap(state, state.likely[0].name) == ui::Actions{ui::TakeProduct{state.likely[0].gtin}});
        CHECK(screen.tap(state, c.no) == ui::Actions{ui::GoBack{}});
    }
}

TEST_CASE("likely product: in Spanish it asks in Spanish")
{
    test::Headless screen({1280, 800}, 100, "es");
    screen.frame(test::likely_state(four, test::language("es")));
    CHECK(screen.words().starts_with("¿Es uno de estos?\nLa cámara ve las barras, pero no con claridad."));
    CHECK(screen.says("Ninguno de estos"));
}

TEST_CASE("likely product: the question, four products and none of them stand on one page in letters of usual size")
{
    for (const ImVec2 size : {ImVec2{1280, 800}, ImVec2{1920, 1080}, ImVec2{800, 1280}})
        for (const std::string code : {"en", "es"}) {
            CAPTURE(size.x);
            CAPTURE(code);
            test::Headless screen(size, 100, code);
            const auto state = test::likely_state(four, test::language(code));
            screen.frame(state);
            for (const auto& likely : state.likely)
                CHECK(screen.says(likely.name));
            CHECK(screen.says(test::language(code).text(TextId::likely_none)));
        }
}

TEST_CASE("likely product: the question and a product to touch stand on one page, at every text size")
{
    for (const int percent : {150, 200, 300})
        for (const std::string code : {"en", "es"}) {
            CAPTURE(percent);
            CAPTURE(code);
            test::Headless screen({1280, 800}, percent, code);
            auto state = test::likely_state(four, test::language(code));
            screen.frame(state);
            CHECK(screen.says(test::language(code).text(TextId::likely_title)));
            CHECK(screen.says(state.likely[0].name));
            const auto& lead = test::language(code).text(TextId::likely_lead);
            const auto begin = lead.substr(0, lead.find(' ', 20)); // a long one is told in pieces
            bool told = screen.says(begin);
            for (state.page = 1; state.page < 9 && !told; ++state.page) {
                screen.frame(state);
                told = screen.says(begin);
            }
            CHECK(told);
        }
}
