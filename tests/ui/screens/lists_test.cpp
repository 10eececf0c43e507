// The lists to choose from: aisles, products, and which of two.
#include "tests/support/headless.h"
#include "tests/ui/samples.h"

#include <doctest/doctest.h>

#include <string>

using ui::ScreenId;
using ui::TextId;

TEST_CASE("lists: the aisles are named with their counts, and a touch opens the touched one")
{
    test::Headless screen({1920, 1080});
    const auto state = test::aisles_state(test::language("en"));
    REQUIRE(state.aisles.size() == 12);
    screen.frame(state);
    std::string wanted = "Choose an aisle\n";
    for (const auto& aisle : state.aisles)
        wanted += aisle.words + "\n" + aisle.words + "\n" + aisle.count + "\n"; // the row to touch, then its words
    CHECK(screen.words() == wanted + "Text size 100%\nEspañol\nBy name\nStart over\nBack\n");
    for (const auto& aisle : state.aisles) {
        CAPTURE(aisle.aisle);
        CHECK(screen.tap(state, aisle.words) == ui::Actions{ui::OpenAisle{aisle.aisle}});
    }
}

TEST_CASE("lists: an empty catalog says so, in both languages")
{
    for (const std::string code : {"en", "es"}) {
        test::Headless screen({1280, 800}, 100, code);
        screen.frame(test::state_of(ScreenId::PickAisle, test::language(code)));
        CHECK(screen.says(test::language(code).text(TextId::pick_empty)));
    }
}

TEST_CASE("lists: every product of an aisle is on one page of it, and a touch takes the touched one")
{
    test::Headless screen;
    auto state = test::products_state("Cereal", test::language("en"));
    REQUIRE(state.picks.size() == 16);
    std::size_t found = 0;
    for (state.page = 0; state.page < 8; ++state.page) {
        screen.frame(state);
        for (const auto& pick : state.picks) {
            if (screen.words().find("\n" + pick.name + "\n") == std::string::npos)
                continue; // on another page
            CAPTURE(pick.name);
            CHECK(screen.tap(state, pick.name) == ui::Actions{ui::TakeProduct{pick.gtin}});
            ++found;
        }
        screen.frame(state);
        if (!screen.says("Next"))
            break;
    }
    CHECK(found == state.picks.size());
}

TEST_CASE("lists: products of one name are told apart by place, and each touch takes its own")
{
    test::Headless screen;
    auto state = test::products_state("Cereal", test::language("en"));
    state.picks.erase(state.picks.begin() + 2, state.picks.end());
    state.picks[1].name = state.picks[0].name;
    CHECK(screen.tap(state, state.picks[0].name, 0) == ui::Actions{ui::TakeProduct{state.picks[0].gtin}});
    CHECK(screen.tap(state, state.picks[0].name, 1) == ui::Actions{ui::TakeProduct{state.picks[1].gtin}});
}

TEST_CASE("lists: pages turn one at a time and end at both ends")
{
    test::Headless screen;
    auto state = test::products_state("", test::language("en"));
    CHECK(screen.tap(state, TextId::button_page_next) == ui::Actions{ui::TurnPage{1}});
    CHECK_THROWS_AS(screen.tap(state, TextId::button_page_before), std::out_of_range);
    state.page = 1;
    CHECK(screen.tap(state, TextId::button_page_before) == ui::Actions{ui::TurnPage{-1}});
    CHECK(screen.says("2 of "));
    state.page = 9999;
    CHECK_THROWS_AS(screen.tap(state, TextId::button_page_next), std::out_of_range);
}

TEST_CASE("lists: which of two asks, says why, and takes the touched one")
{
    test::Headless screen;
    auto state = test::products_state("Cereal", test::language("en"));
    state.screen = ScreenId::WhichProduct;
    state.picks.erase(state.picks.begin() + 2, state.picks.end());
    screen.frame(state);
    CHECK(screen.words().starts_with(
        "Which one is it?\nThese eight digits can be two different codes. Touch the package in your hand.\n"));
    CHECK(screen.tap(state, state.picks[1].name) == ui::Actions{ui::TakeProduct{state.picks[1].gtin}});
    test::Headless spanish({1280, 800}, 100, "es");
    spanish.frame(state);
    CHECK(spanish.words().starts_with("¿Cuál es?\nEstos ocho dígitos pueden ser dos códigos distintos."));
}

TEST_CASE("lists: which of two shows its question and a product to touch on one page, at every text size up to 200 %")
{
    for (const int percent : {100, 150, 200})
        for (const std::string code : {"en", "es"}) {
            CAPTURE(percent);
            CAPTURE(code);
            test::Headless screen({1280, 800}, percent, code);
            auto state = test::products_state("Cereal", test::language(code));
            state.screen = ScreenId::WhichProduct;
            state.picks.erase(state.picks.begin() + 2, state.picks.end());
            screen.frame(state);
            CHECK(screen.says(test::language(code).text(TextId::which_title)));
            CHECK(screen.says(state.picks[0].name));
        }
}
