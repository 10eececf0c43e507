// The pair: every word of the comparison is shown once, in order, and each touch asks for one thing.
#include "tests/support/headless.h"
#include "tests/ui/samples.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

namespace {

using core::Basis;
using ui::Side;
using ui::TextId;

ui::State two_cereals(const std::string& code, Basis basis = Basis::Serving)
{
    return test::pair_state(test::demo_product("9520141001120"), test::demo_product("9520208001131"), basis,
                            test::language(code));
}

std::string all_pages(test::Headless& screen, ui::State state)
{
    std::string all;
    for (state.page = 0; state.page < 60; ++state.page) {
        screen.frame(state);
        all += screen.words();
        bool more = false;
        for (const auto& note : screen.notes())
            more = more || note.id == TextId::button_page_next;
        if (!more)
            break;
    }
    return all;
}

} // namespace

TEST_CASE("pair: the first page says both sides, what misleads most, the bases and calories, in this order")
{
    test::Headless screen;
    screen.frame(two_cereals("en"));
    CHECK(screen.words().starts_with("Left · Quillford Mills\nBran strands\nThis label\nKeep this\n"
                                     "About 12 servings, 2/3 cup (40 g) each\n17.5 oz (496 g)\n"
                                     "Right · Dunmarrow\nOat granola, almond\nThis label\nKeep this\n"
                                     "About 6 servings, 1/2 cup (54 g) each\n12 oz (340 g)\n"
                                     "The servings differ: 40 g on the left, 54 g on the right.\n"
                                     "One serving\nWhole package\nSame amount: 100 g\nOther amount\n"
                                     "Calories\n90\n230\nLeft has fewer\n"
                                     "Less of\nTouch a line: where it comes from\n5%\n20%\n100%\n"
                                     "Total fat\n1.5 g\n2%\n9 g\n12%\nLeft has less\n"));
    test::Headless spanish({1280, 800}, 100, "es");
    spanish.frame(two_cereals("es"));
    CHECK(spanish.says("Las porciones no son iguales: 40 g a la izquierda, 54 g a la derecha."));
    CHECK(spanish.says("Izquierda: menos"));
}

TEST_CASE(
    "pair: every row with its finding and remarks is on one of the pages, in order, at every text size up to 200 %")
{
    for (const int percent : {100, 200})
        for (const std::string code : {"en", "es"}) {
            test::Headless screen({1280, 800}, percent, code);
            for (const auto basis : {Basis::Serving, Basis::Package, Basis::SameAmount}) {
                const auto state = test::pair_state(test::demo_product("9520366004012"),
                                                    test::demo_product("9520366004029"), basis, test::language(code));
                const std::string shown = all_pages(screen, state);
                std::size_t at = state.pair->first.empty() ? 0 : shown.find(state.pair->first.front());
                REQUIRE(at != std::string::npos);
                CHECK(shown.find(state.pair->guide) != std::string::npos);
                for (const auto& row : state.pair->rows) {
                    std::vector<std::string> words{row.name, row.left.amount, row.right.amount};
                    words.insert(words.end(), row.remarks.begin(), row.remarks.end());
                    for (const auto& word : words) {
                        CAPTURE(percent);
                        CAPTURE(word);
                        const auto found = shown.find(word, at);
                        REQUIRE(found != std::string::npos);
                        at = found;
                    }
                }
            }
        }
}

TEST_CASE("pair: what the packages say of allergens, grain and sugars stands behind the rows, each sentence whole")
{
    for (const std::string code : {"en", "es"}) {
        test::Headless screen({1280, 800}, 100, code);
        const auto state = two_cereals(code);
        REQUIRE(state.pair->sections.size() == 3);
        const std::string shown = all_pages(screen, state);
        std::size_t at = shown.rfind(state.pair->rows.back().name);
        for (const auto& section : state.pair->sections) {
            std::vector<std::string> words{section.heading};
            words.insert(words.end(), section.sentences.begin(), section.sentences.end());
            for (const auto& word : words) {
                CAPTURE(word);
                const auto found = shown.find(word, at);
                REQUIRE(found != std::string::npos);
                at = found;
            }
        }
    }
}

TEST_CASE(
    "pair: the first page holds both names, the bases, the servings and the calories, at every text size up to 200 %")
{
    for (const int percent : {100, 150, 200})
        for (const std::string code : {"en", "es"}) {
            CAPTURE(percent);
            CAPTURE(code);
            test::Headless screen({1280, 800}, percent, code);
            const auto state = two_cereals(code);
            screen.frame(state);
            for (const auto& side : state.pair->sides) {
                CHECK(screen.says(side.name));
                CHECK(screen.says(side.servings));
            }
            for (const auto& basis : state.pair->bases)
                CHECK(screen.says(basis.words));
            CHECK(screen.says(state.pair->first.front()));
            CHECK(screen.says("90"));
            CHECK(screen.says("230"));
            CHECK(screen.says(state.pair->rows.front().finding));
        }
}

TEST_CASE("pair: every page says who is left and who is right, and where 5 and 20 stand over its lines, up to 200 %")
{
    for (const ImVec2 size : {ImVec2{1280, 800}, ImVec2{800, 1280}})
        for (const int percent :
             {100, 150, 200}) // at 300 % one nutrient fills a page, and heads have pages of their own
            for (const std::string code : {"en", "es"}) {
                test::Headless screen(size, percent, code);
                auto state = two_cereals(code);
                for (state.page = 0; state.page < 60; ++state.page) {
                    CAPTURE(size.x);
                    CAPTURE(percent);
                    CAPTURE(code);
                    CAPTURE(state.page);
                    screen.frame(state);
                    for (const auto& side : state.pair->sides)
                        CHECK(screen.says(side.name));
                    bool scale = false;
                    std::set<float> sizes_of_names;
                    for (const auto& note : screen.notes()) {
                        scale = scale || (note.words == "20%" && note.role == ui::Role::Figure);
                        for (const auto& row : state.pair->rows)
                            if (note.words == row.name) {
                                sizes_of_names.insert(note.letter_px);
                                CHECK((scale || (!row.left.percent_value && !row.right.percent_value)));
                            }
                    }
                    if (percent >= 150)
                        CHECK(sizes_of_names.size() <= 1);
                    if (!screen.says(test::language(code).text(TextId::button_page_next)))
                        break;
                }
            }
}

TEST_CASE("pair: the whole package shows four rows on its first page, and breaks no finding")
{
    constexpr const char* pairs[][2] = {
        {"9520366004012", "9520366004029"}, {"9520588008010", "9520588008027"}, {"9520519007051", "9520519007075"},
        {"9520310003023", "9520310003030"}, {"9520427005033", "9520427005088"}, {"520417009019", "9520634009022"},
    };
    test::Headless screen;
    const float line = screen.look().fonts.text->FontSize;
    for (const auto& [left, right] : pairs) {
        const auto& told_left = left;
        CAPTURE(told_left);
        const auto state =
            test::pair_state(test::demo_product(left), test::demo_product(right), Basis::Package, test::language("en"));
        screen.frame(state);
        int rows = 0;
        for (const auto& note : screen.notes())
            for (const auto& row : state.pair->rows) {
                rows += note.words == row.name ? 1 : 0;
                if (note.words == row.finding)
                    CHECK(note.high.y - note.low.y <= line);
            }
        // Of the beans each side says something of its own in two rows: their net quantities differ.
        CHECK(rows >= (std::string(left) == "520417009019" ? 3 : 4));
    }
}

TEST_CASE("pair: each basis is one touch away")
{
    test::Headless screen;
    const auto state = two_cereals("en");
    CHECK(screen.tap(state, TextId::basis_serving) == ui::Actions{ui::ChooseBasis{Basis::Serving}});
    CHECK(screen.tap(state, TextId::basis_package) == ui::Actions{ui::ChooseBasis{Basis::Package}});
    CHECK(screen.tap(state, TextId::basis_same) == ui::Actions{ui::ChooseBasis{Basis::SameAmount}});
    CHECK(screen.tap(state, TextId::basis_other) == ui::Actions{ui::OpenAmounts{}});
}

TEST_CASE("pair: a touch on a row asks where its figures come from")
{
    test::Headless screen;
    const auto state = two_cereals("en");
    CHECK(screen.tap(state, TextId::why_hint, 0) == ui::Actions{ui::OpenWhy{core::Nutrient::Calories, std::nullopt}});
    CHECK(screen.tap(state, TextId::why_hint, 1) == ui::Actions{ui::OpenWhy{core::Nutrient::TotalFat, std::nullopt}});
}

TEST_CASE("pair: Keep and This label belong to their own side")
{
    test::Headless screen;
    auto state = two_cereals("en");
    CHECK(screen.tap(state, TextId::button_keep, 0) == ui::Actions{ui::ToggleKeep{Side::Left}});
    CHECK(screen.tap(state, TextId::button_keep, 1) == ui::Actions{ui::ToggleKeep{Side::Right}});
    CHECK(screen.tap(state, TextId::button_open_label, 0) == ui::Actions{ui::OpenLabel{Side::Left}});
    CHECK(screen.tap(state, TextId::button_open_label, 1) == ui::Actions{ui::OpenLabel{Side::Right}});
    state.sides[1]->kept = true;
    CHECK(screen.tap(state, TextId::button_kept) == ui::Actions{ui::ToggleKeep{Side::Right}});
    CHECK(screen.tap(state, TextId::button_keep) == ui::Actions{ui::ToggleKeep{Side::Left}});
}

TEST_CASE("pair: a name is not squeezed into a narrow column beside Keep")
{
    const auto chips = test::pair_state(test::demo_product("9520366004012"), test::demo_product("9520366004029"),
                                        Basis::Package, test::language("en"));
    for (const ImVec2 size : {ImVec2{1280, 800}, ImVec2{800, 1280}}) {
        CAPTURE(size.x);
        test::Headless screen(size);
        screen.frame(chips);
        const auto& notes = screen.notes();
        const auto name = std::ranges::find(notes, "Tortilla chips, yellow corn", &ui::Note::words);
        const auto keep = std::ranges::find(notes, TextId::button_keep, &ui::Note::id);
        REQUIRE(name != notes.end());
        REQUIRE(keep != notes.end());
        CHECK(name->high.y - name->low.y < 2.5F * 1.5F * name->letter_px); // two lines at most
        CHECK((keep->low.y < name->high.y) == (size.x > size.y));          // beside it, or below all of it
    }
}

TEST_CASE("pair: the bar's touches, and the pages")
{
    test::Headless screen;
    auto state = two_cereals("en");
    CHECK(screen.tap(state, TextId::button_back) == ui::Actions{ui::GoBack{}});
    CHECK(screen.tap(state, TextId::button_start_over) == ui::Actions{ui::StartOver{}});
    CHECK(screen.tap(state, TextId::button_by_name) == ui::Actions{ui::FindByName{}});
    CHECK(screen.tap(state, TextId::language_name) == ui::Actions{ui::NextLanguage{}});
    CHECK(screen.tap(state, TextId::button_text_size) == ui::Actions{ui::NextTextSize{}});
    CHECK(screen.tap(state, TextId::button_page_next) == ui::Actions{ui::TurnPage{1}});
    state.page = 1;
    CHECK(screen.tap(state, TextId::button_page_before) == ui::Actions{ui::TurnPage{-1}});
    screen.frame(state);
    CHECK(screen.says("Bran strands")); // whose figures these are is said on every page
    CHECK(screen.says("Oat granola, almond"));
}

TEST_CASE("pair: every page says which basis its figures are of, and changes it by a touch while letters leave room")
{
    const auto chips = test::pair_state(test::demo_product("9520366004012"), test::demo_product("9520366004029"),
                                        Basis::Package, test::language("en"));
    for (const ImVec2 size : {ImVec2{1280, 800}, ImVec2{800, 1280}})
        for (const int percent : {100, 150, 200}) {
            CAPTURE(size.x);
            CAPTURE(percent);
            test::Headless screen(size, percent);
            auto state = chips;
            for (state.page = 0; state.page < 40; ++state.page) {
                CAPTURE(state.page);
                screen.frame(state);
                CHECK(screen.says("Whole package"));
                if (!screen.says("Next"))
                    break;
            }
            state.page = 1;
            if (percent == 100)
                CHECK(screen.tap(state, TextId::basis_serving) == ui::Actions{ui::ChooseBasis{Basis::Serving}});
        }
}

TEST_CASE("pair: in the largest letters, too, a side that is kept is seen to be")
{
    test::Headless screen({800, 1280}, 200);
    auto state = two_cereals("en");
    screen.frame(state);
    CHECK(!screen.says("Kept"));
    state.sides[0]->kept = true;
    screen.frame(state);
    CHECK(screen.says("Bran strands · Kept"));
    CHECK(!screen.says("Oat granola, almond · Kept"));
}

TEST_CASE("pair: why nothing is compared stands before the first figure, in letters of every size")
{
    for (const int percent : {100, 150, 200}) {
        CAPTURE(percent);
        test::Headless screen({800, 1280}, percent);
        const auto state = test::pair_state(test::demo_product("9520427005033"), test::demo_product("9520427005088"),
                                            Basis::SameAmount, test::language("en"));
        const auto shown = all_pages(screen, state);
        const auto why = shown.find("One label counts in grams, the other in milliliters");
        REQUIRE(why != std::string::npos);
        CHECK(why < shown.find("\nCalories\n"));
    }
}

TEST_CASE("pair: what cannot be compared is shown, and no finding is claimed")
{
    test::Headless screen;
    const auto state = test::pair_state(test::demo_product("9520427005033"), test::demo_product("9520427005088"),
                                        Basis::SameAmount, test::language("en"));
    const auto shown = all_pages(screen, state);
    CHECK(shown.find("One label counts in grams, the other in milliliters") != std::string::npos);
    CHECK(shown.find("Left has") == std::string::npos);
    CHECK(shown.find("160") != std::string::npos);
}

TEST_CASE("pair: without a pair nothing is drawn and nothing breaks")
{
    test::Headless screen;
    CHECK(screen.frame(test::state_of(ui::ScreenId::Pair, test::language("en"))).empty());
    CHECK(screen.words() == "");
}

TEST_CASE("pair: where one serving is shown instead of what was asked for, every page says so")
{
    test::Headless screen;
    auto state = test::pair_state(test::demo_product("9520427005033"), test::demo_product("9520427005088"),
                                  Basis::SameAmount, test::language("en"));
    for (state.page = 0; state.page < 3; ++state.page) {
        CAPTURE(state.page);
        screen.frame(state);
        CHECK(screen.words().find("One serving") != std::string::npos);
    }
    state.page = 1;
    screen.frame(state);
    CHECK(std::ranges::none_of(screen.notes(), [](const ui::Note& note) { return note.chosen; }));
}

TEST_CASE("pair: who hears it is told the side of what stands there twice")
{
    test::Headless screen;
    screen.frame(two_cereals("en"));
    std::set<std::string> said;
    for (const auto& note : screen.notes())
        if (note.id == TextId::button_keep)
            said.insert(note.said);
    CHECK(said == std::set<std::string>{"Left: Keep this", "Right: Keep this"});
}
