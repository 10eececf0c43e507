// One label on its pages: every piece of its words is shown once, in order, and touches lead back to the pair.
#include "tests/support/headless.h"
#include "tests/ui/samples.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <regex>
#include <set>
#include <string>
#include <vector>

namespace {

using ui::TextId;

/// The words of all pages without what is on every page: bar, notice, count of pages, and the title but once.
std::string all_pages(test::Headless& screen, ui::State state)
{
    static const std::regex count_of_pages{"[0-9]+ (of|de) [0-9]+"};
    std::string all;
    state.notice.words.clear();
    std::set<std::string> headings;
    for (state.page = 0; state.page < 60; ++state.page) {
        screen.frame(state);
        bool more = false;
        for (const auto& note : screen.notes()) {
            more = more || note.id == TextId::button_page_next;
            const bool again = note.role == ui::Role::Heading &&
                               (note.words.ends_with("(continued)") || note.words.ends_with("(continúa)") ||
                                !headings.insert(note.words).second);
            const bool of_a_button = note.touchable && note.id != TextId::why_hint;
            if (!of_a_button && !again && !std::regex_match(note.words, count_of_pages))
                all += note.words + "\n";
        }
        if (!more)
            break;
    }
    return all;
}

/// Whether these words stand in that order in the text, each behind the one before.
std::string first_missing(const std::string& text, const std::vector<std::string>& words)
{
    std::size_t at = 0;
    for (const auto& one : words) {
        const auto found = text.find(one, at);
        if (found == std::string::npos)
            return one;
        at = found + one.size();
    }
    return "";
}

} // namespace

TEST_CASE("one label: every piece is on one of the pages, in the taught order, in both languages")
{
    for (const std::string code : {"en", "es"})
        for (const int percent : {100, 200}) {
            test::Headless screen({1280, 800}, percent, code);
            for (const std::string product : {"9520366004012", "9520141001069", "9520588008041", "520417001013"}) {
                CAPTURE(product);
                CAPTURE(code);
                CAPTURE(percent);
                const auto state = test::label_state(test::demo_product(product), test::language(code));
                std::vector<std::string> wanted{state.label->name, state.label->brand};
                for (const auto& piece : state.label->pieces) {
                    if (piece.name.size() < 100) // longer ones may come in pieces
                        wanted.push_back(piece.name);
                    if (!piece.amount.empty())
                        wanted.push_back(piece.amount);
                    if (!piece.reading.empty())
                        wanted.push_back(piece.reading);
                }
                CHECK(first_missing(all_pages(screen, state), wanted) == "");
            }
        }
}

TEST_CASE("one label: name and brand share a line, or have one each; no line begins with a dot")
{
    const auto state = test::label_state(test::demo_product("9520366004012"), test::language("en"));
    test::Headless wide;
    wide.frame(state);
    CHECK(wide.says("Tortilla chips, yellow corn · Saltwhistle"));
    test::Headless upright({800, 1280}, 150);
    upright.frame(state);
    CHECK(upright.says("Tortilla chips, yellow corn\nSaltwhistle"));
}

TEST_CASE("one label: its side is kept and let go from here, in letters of every size")
{
    for (const int percent : {100, 200}) {
        test::Headless screen({800, 1280}, percent);
        auto state = test::label_state(test::demo_product("9520366004012"), test::language("en"));
        CHECK(screen.tap(state, TextId::button_keep) == ui::Actions{ui::ToggleKeep{ui::Side::Left}});
        state.sides[0]->kept = true;
        CHECK(screen.tap(state, TextId::button_kept) == ui::Actions{ui::ToggleKeep{ui::Side::Left}});
    }
}

TEST_CASE("one label: no word of a long list is lost when large letters break it over pages")
{
    test::Headless screen({1280, 800}, 200);
    auto products = test::demo_products();
    products.push_back(test::product_with_long_list()); // over several pages
    for (const auto& product : products) {
        if (!product.label.ingredients || product.label.ingredients->size() < 250)
            continue;
        CAPTURE(product.name);
        std::string shown = all_pages(screen, test::label_state(product, test::language("en")));
        for (char& c : shown)
            if (c == '\n')
                c = ' ';
        CHECK(shown.find(*product.label.ingredients) != std::string::npos);
    }
}

TEST_CASE("one label: alone it asks for a second package; of two it leads back to both")
{
    test::Headless screen;
    const auto& strands = test::demo_product("9520141001120");
    const auto alone = test::label_state(strands, test::language("en"));
    screen.frame(alone);
    CHECK(screen.says("Scan a second package to see both side by side."));
    CHECK_THROWS_AS(screen.tap(alone, TextId::button_compare), std::out_of_range);
    CHECK(screen.tap(alone, TextId::button_back) == ui::Actions{ui::GoBack{}});
    CHECK(screen.tap(alone, TextId::button_start_over) == ui::Actions{ui::StartOver{}});

    auto of_two =
        test::pair_state(strands, test::demo_product("9520208001131"), core::Basis::Serving, test::language("en"));
    of_two.screen = ui::ScreenId::OneLabel;
    of_two.label = alone.label;
    CHECK(screen.tap(of_two, TextId::button_compare) == ui::Actions{ui::ShowPair{}});
    screen.frame(of_two);
    CHECK(!screen.says("Scan a second package to see both side by side."));
}

TEST_CASE("one label: every page that shows lines names what they are, and says where 5 and 20 stand, up to 200 %")
{
    for (const std::string code : {"en", "es"})
        for (const int percent : {100, 150, 200}) { // at 300 % one nutrient fills a page
            test::Headless screen({1280, 800}, percent, code);
            auto state = test::label_state(test::demo_product("9520141001069"), test::language(code));
            int with_readings = 0;
            for (state.page = 0; state.page < 60; ++state.page) {
                CAPTURE(code);
                CAPTURE(percent);
                CAPTURE(state.page);
                screen.frame(state);
                bool reading = false;
                bool scale = false;
                bool heading = false;
                for (const auto& note : screen.notes()) {
                    const bool is_reading = std::ranges::any_of(state.label->pieces, [&](const auto& piece) {
                        return !piece.reading.empty() && piece.reading == note.words;
                    });
                    reading = reading || is_reading;
                    scale = scale || (note.words == "20%" && note.role == ui::Role::Figure && !reading);
                    heading = heading || (note.role == ui::Role::Heading && !note.words.starts_with(state.label->name));
                }
                CHECK((!reading || (scale && heading)));
                with_readings += reading ? 1 : 0;
                if (!screen.says(test::language(code).text(TextId::button_page_next)))
                    break;
            }
            CHECK(with_readings >= 3);
        }
}

TEST_CASE("one label: servings and serving size open to where they come from")
{
    const auto& language = test::language("en");
    auto state = test::label_state(test::demo_product("9520141001069"), language);
    test::Headless screen({1280, 800});
    for (const std::size_t nth : {0U, 1U})
        CHECK(screen.tap(state, TextId::why_hint, nth) == ui::Actions{ui::OpenWhy{std::nullopt, ui::Side::Left}});
    CHECK(screen.tap(state, TextId::why_hint, 2) == ui::Actions{ui::OpenWhy{core::Nutrient::Calories, ui::Side::Left}});
}

TEST_CASE("one label: of two, every page leads back to both")
{
    const auto& language = test::language("en");
    for (const int percent : {100, 200}) {
        test::Headless screen({1280, 800}, percent);
        auto state = test::pair_state(test::demo_product("9520141001069"), test::demo_product("9520208001131"),
                                      core::Basis::Serving, language);
        state.screen = ui::ScreenId::OneLabel;
        state.label = ui::label_words(state.sides[0]->product, language);
        for (state.page = 0; state.page < 5; ++state.page) {
            CAPTURE(state.page);
            CHECK(screen.tap(state, TextId::button_compare) == ui::Actions{ui::ShowPair{}});
        }
    }
}

TEST_CASE("one label: without a label nothing is drawn and nothing breaks")
{
    test::Headless screen;
    CHECK(screen.frame(test::state_of(ui::ScreenId::OneLabel, test::language("en"))).empty());
    CHECK(screen.words() == "");
}
