// The screen that finds products by their names: what it says, what each touch asks for, and what stays in its place.
#include "tests/support/headless.h"
#include "tests/ui/samples.h"
#include "ui/words/found_words.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <string>

using ui::ScreenId;
using ui::TextId;

namespace {

/// Places of all letters and of the other keys, by their words.
std::map<std::string, ImVec2> places_of_keys(test::Headless& screen, const ui::State& state)
{
    screen.frame(state);
    std::map<std::string, ImVec2> places;
    for (const auto& note : screen.notes())
        if (note.touchable && (note.words.size() <= 2 || note.id == TextId::find_space))
            places[note.words] = note.low;
    return places;
}

} // namespace

TEST_CASE("find by name: says what to type, and has a key for each letter of the language")
{
    test::Headless english;
    english.frame(test::state_of(ScreenId::FindByName, test::language("en")));
    CHECK(english.words() ==
          "Find by name\nA\nB\nC\nD\nE\nF\nG\nH\nI\nJ\nK\nL\nM\nN\nO\nP\nQ\nR\nS\nT\nU\nV\nW\nX\nY\nZ\nSpace\nErase\n"
          "Clear\nType a name, a brand or a kind of food. The beginning of a word is enough.\n"
          "Text size 100%\nEspañol\nBy name\nStart over\nBack\n");
    test::Headless spanish({1280, 800}, 100, "es");
    spanish.frame(test::state_of(ScreenId::FindByName, test::language("es")));
    CHECK(
        spanish.words() ==
        "Buscar por nombre\nA\nB\nC\nD\nE\nF\nG\nH\nI\nJ\nK\nL\nM\nN\nÑ\nO\nP\nQ\nR\nS\nT\nU\nV\nW\nX\nY\nZ\nEspacio\n"
        "Borrar\nVaciar\nEscriba un nombre, una marca o un tipo de alimento. Basta con el comienzo de una palabra.\n"
        "Letra 100%\nEnglish\nPor nombre\nEmpezar de nuevo\nAtrás\n");
}

TEST_CASE("find by name: each key asks for its letter, the others for what they say")
{
    for (const std::string code : {"en", "es"})
        for (const ImVec2 size : {ImVec2{1280, 800}, ImVec2{800, 1280}}) {
            CAPTURE(code);
            test::Headless screen(size, 200, code);
            auto state = test::found_state("WHE", "", test::language(code));
            for (const std::string letter : {"A", "M", "N", "Z"})
                CHECK(screen.tap(state, letter) == ui::Actions{ui::TypeLetters{letter}});
            if (code == "es")
                CHECK(screen.tap(state, "Ñ") == ui::Actions{ui::TypeLetters{"Ñ"}});
            CHECK(screen.tap(state, TextId::find_space) == ui::Actions{ui::TypeLetters{" "}});
            CHECK(screen.tap(state, TextId::keypad_erase) == ui::Actions{ui::EraseLetter{}});
            CHECK(screen.tap(state, TextId::keypad_clear) == ui::Actions{ui::ClearLetters{}});
        }
}

TEST_CASE("find by name: shows what is typed and what fits it, and a touch takes the touched one")
{
    test::Headless screen;
    auto state = test::found_state("OAT", "Cereal", test::language("en"));
    REQUIRE(state.found.size() == 16);
    screen.frame(state);
    CHECK(screen.says("OAT"));
    CHECK(screen.says("16 products"));
    CHECK(!screen.says("Type a name"));
    std::size_t taken = 0;
    for (state.page = 0; state.page < 9; ++state.page) {
        screen.frame(state);
        for (const auto& found : state.found) {
            if (screen.words().find("\n" + found.name + "\n" + found.detail + "\n") == std::string::npos)
                continue; // on another page
            CAPTURE(found.name);
            CHECK(screen.tap(state, found.name) == ui::Actions{ui::TakeProduct{found.gtin}});
            ++taken;
        }
        screen.frame(state);
        if (!screen.says("Next"))
            break;
    }
    CHECK(taken == state.found.size());
}

TEST_CASE("find by name: a word that was left out is told above the answers, in both languages")
{
    for (const std::string code : {"en", "es"}) {
        test::Headless screen({1280, 800}, 100, code);
        auto state = test::found_state("CEREAL SOYA", "Cereal", test::language(code));
        state.found_words = ui::found_words({16, true, 60, {"SOYA"}}, test::language(code));
        screen.frame(state);
        const auto told = screen.words().find(code == "en" ? "No product here has the word “SOYA”."
                                                           : "Ningún producto de aquí tiene la palabra “SOYA”.");
        REQUIRE(told != std::string::npos);
        CHECK(told < screen.words().find(state.found.front().name));
    }
}

TEST_CASE("find by name: the aisles are offered until something is typed, where there are some")
{
    test::Headless screen;
    auto state = test::state_of(ScreenId::FindByName, test::language("en"));
    CHECK_THROWS_AS(screen.tap(state, TextId::find_by_aisle), std::out_of_range);
    state.by_aisle = true;
    CHECK(screen.tap(state, TextId::find_by_aisle) == ui::Actions{ui::ChooseAisle{}});
    state = test::found_state("OAT", "Cereal", test::language("en"));
    state.by_aisle = true;
    CHECK_THROWS_AS(screen.tap(state, TextId::find_by_aisle), std::out_of_range);
}

TEST_CASE("find by name: no key moves under the finger, whatever is typed and found")
{
    for (const ImVec2 size : {ImVec2{1280, 800}, ImVec2{1920, 1080}, ImVec2{800, 1280}})
        for (const int percent : {100, 200}) {
            CAPTURE(size.x);
            CAPTURE(percent);
            const auto& language = test::language("es");
            test::Headless screen(size, percent, "es");
            const auto empty = places_of_keys(screen, test::state_of(ScreenId::FindByName, language));
            CHECK(empty.size() == 28);
            auto state = test::found_state("WHOLE GRAIN WHEAT SQUARES WITH HONEY AND CINNAMON, FAMILY", "", language);
            for (state.page = 0; state.page < 2; ++state.page) {
                const auto typed = places_of_keys(screen, state);
                for (const auto& [key, place] : empty) {
                    const auto& told_key = key;
                    CAPTURE(told_key);
                    CHECK(typed.at(key).x == place.x);
                    CHECK(typed.at(key).y == place.y);
                }
            }
        }
}

TEST_CASE("find by name: of a name longer than its field the last letters are seen")
{
    test::Headless screen({800, 1280}, 200);
    auto state = test::found_state("WHOLE GRAIN WHEAT SQUARES WITH HONEY ÑANDÚ", "", test::language("en"));
    screen.frame(state);
    CHECK(screen.says("HONEY ÑANDÚ"));
    CHECK(!screen.says("WHOLE GRAIN"));
}

TEST_CASE("find by name: a name of any length stays in its row, and the beginning of both lines is read")
{
    test::Headless screen({800, 1280}, 200);
    auto state = test::found_state("O", "", test::language("en"));
    state.found.erase(state.found.begin() + 1, state.found.end());
    std::string long_name = "Begun ";
    for (int i = 0; i < 60; ++i)
        long_name += "wheat squares ";
    state.found[0].name = long_name;
    state.found[0].detail = "For this place only\n" + long_name;
    screen.frame(state);
    state.page = 1;
    for (int page = 0; page < 2 && !screen.says("For this place only"); ++page)
        screen.frame(state);
    CHECK(screen.says("Begun wheat"));
    CHECK(screen.says("..."));
    CHECK(screen.says("For this place only\nBegun"));
    CHECK(std::ranges::none_of(screen.notes(), [](const auto& note) { return note.cut; }));
}
