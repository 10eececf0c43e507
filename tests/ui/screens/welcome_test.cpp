// Welcome and Not found: what they say, in order, and what each touch asks for.
#include "tests/support/headless.h"
#include "tests/ui/samples.h"

#include <doctest/doctest.h>

using ui::ScreenId;
using ui::TextId;

TEST_CASE("welcome: says what to do, where the packages will stand, and what the figures are")
{
    test::Headless english;
    english.frame(test::state_of(ScreenId::Welcome, test::language("en")));
    CHECK(english.words() ==
          "Two labels, side by side\n"
          "Scan the bar code of one package, then of another. See what each label says, per serving, "
          "for the whole package and in equal amounts.\n"
          "Left\nFirst package\nWaiting for a scan\n"
          "Right\nSecond package\nWaiting for a scan\n"
          "Choose by name\n"
          "Figures are those of the label on the day it was entered. Read the package in your hand "
          "too.\n"
          "See and hear\nWhat do these words mean?\n"
          "Text size 100%\nEspañol\nBy name\n");
    test::Headless spanish({1280, 800}, 100, "es");
    spanish.frame(test::state_of(ScreenId::Welcome, test::language("es")));
    CHECK(
        spanish.words() ==
        "Dos etiquetas, lado a lado\n"
        "Escanee el código de barras de un paquete y luego el de otro. Vea lo que dice cada etiqueta: por porción, en "
        "todo el paquete y en cantidades iguales.\n"
        "Izquierda\nPrimer paquete\nEsperando un código\n"
        "Derecha\nSegundo paquete\nEsperando un código\n"
        "Elegir por nombre\n"
        "Las cifras son las de la etiqueta el día en que se anotó. Lea también el paquete que tiene en la mano.\n"
        "Ver y oír\n¿Qué significan estas palabras?\n"
        "Letra 100%\nEnglish\nPor nombre\n");
}

TEST_CASE("welcome: each touch asks for one thing")
{
    test::Headless screen;
    auto state = test::state_of(ScreenId::Welcome, test::language("en"));
    CHECK(screen.tap(state, TextId::button_choose_by_name) == ui::Actions{ui::FindByName{}});
    CHECK(screen.tap(state, TextId::button_by_name) == ui::Actions{ui::FindByName{}});
    CHECK(screen.tap(state, TextId::language_name) == ui::Actions{ui::NextLanguage{}});
    CHECK(screen.tap(state, TextId::button_text_size) == ui::Actions{ui::NextTextSize{}});
    CHECK_THROWS_AS(screen.tap(state, TextId::button_back), std::out_of_range); // there is no way back from here
    CHECK_THROWS_AS(screen.tap(state, TextId::button_start_over), std::out_of_range);
    CHECK_THROWS_AS(screen.tap(state, TextId::find_by_aisle), std::out_of_range); // there are no aisles
    state.by_aisle = true;
    CHECK(screen.tap(state, TextId::find_by_aisle) == ui::Actions{ui::ChooseAisle{}});
    state.can_take_back = true;
    CHECK(screen.tap(state, TextId::button_take_back) == ui::Actions{ui::TakeBack{}});
}

TEST_CASE("welcome: a package that is held stands in its place, and the camera tells how it is")
{
    test::Headless screen;
    auto state = test::label_state(test::demo_product("9520141001120"), test::language("en"));
    state.screen = ScreenId::Welcome;
    state.reader = "No camera";
    screen.frame(state);
    CHECK(screen.says("Bran strands"));
    CHECK(!screen.says("First package"));
    CHECK(screen.says("Second package"));
    CHECK(screen.says("No camera"));
    CHECK(screen.says("Bran strands is now on the left."));
    CHECK(screen.tap(state, TextId::button_start_over) == ui::Actions{ui::StartOver{}});
}

TEST_CASE("welcome: tells whose labels these are, below the caution, which large letters must not push away")
{
    test::Headless screen;
    auto state = test::state_of(ScreenId::Welcome, test::language("en"));
    state.bundle = "Labels: “Winter”, made 2026-11-25 by Cedar Hollow.";
    screen.frame(state);
    const auto words = screen.words();
    CHECK(words.find("in your hand too.\nLabels: “Winter”, made 2026-11-25 by Cedar Hollow.\nSee and hear\nWhat do "
                     "these words mean?\nText size") != std::string::npos);
}

TEST_CASE("welcome: with both sides full it leads back to them, and each place to its label")
{
    for (const int percent : {100, 150, 200}) { // on the first page in letters of every size
        CAPTURE(percent);
        test::Headless screen({800, 1280}, percent);
        auto state = test::pair_state(test::demo_product("9520141001120"), test::demo_product("9520208001131"),
                                      core::Basis::Serving, test::language("en"));
        state.screen = ScreenId::Welcome;
        CHECK(screen.tap(state, TextId::button_compare) == ui::Actions{ui::ShowPair{}});
        CHECK(screen.tap(state, TextId::button_open_label, 0) == ui::Actions{ui::OpenLabel{ui::Side::Left}});
        CHECK(screen.tap(state, TextId::button_open_label, 1) == ui::Actions{ui::OpenLabel{ui::Side::Right}});
    }
}

TEST_CASE("not found: says which code, what to do, and where the same things stand")
{
    test::Headless english;
    auto state = test::state_of(ScreenId::NotFound, test::language("en"));
    state.code = "09521234567899";
    english.frame(state);
    CHECK(english.words() ==
          "No label here for this code\nCode 09521234567899\nScan another package, or choose one by name.\n"
          "Choose by name\n"
          "The label on the package tells you the same things. Read the servings first, then calories, then % Daily "
          "Value.\nWhat do these words mean?\n"
          "Text size 100%\nEspañol\nBy name\nStart over\nBack\n");
    CHECK(english.tap(state, TextId::button_choose_by_name) == ui::Actions{ui::FindByName{}});
    CHECK(english.tap(state, TextId::button_back) == ui::Actions{ui::GoBack{}});
    CHECK(english.tap(state, TextId::button_start_over) == ui::Actions{ui::StartOver{}});
    test::Headless spanish({1280, 800}, 100, "es");
    auto en_espanol = test::state_of(ScreenId::NotFound, test::language("es"));
    en_espanol.code = "09521234567899";
    spanish.frame(en_espanol);
    CHECK(spanish.words().starts_with("Aquí no hay etiqueta para este código\nCódigo 09521234567899\n"
                                      "Escanee otro paquete o elija uno por nombre.\nElegir por nombre\n"));
}

TEST_CASE("welcome: one page holds all of it on a usual screen, with the camera's picture, its words and the desk")
{
    for (const std::string code : {"en", "es"})
        for (const ImVec2 size : {ImVec2{1280, 800}, ImVec2{1920, 1080}, ImVec2{800, 1280}})
            for (const bool camera : {true, false}) {
                CAPTURE(code);
                CAPTURE(size.x);
                CAPTURE(camera);
                const auto& language = test::language(code);
                auto state = test::state_of(ScreenId::Welcome, language);
                state.desk_open = true;
                state.by_aisle = true;
                state.reader = language.text(camera ? TextId::camera_small : TextId::camera_unplugged);
                if (camera)
                    state.camera = test::camera_view(language.text(TextId::camera_aim));
                test::Headless screen(size, 100, code);
                screen.frame(state);
                CHECK_FALSE(screen.says(language.text(TextId::button_page_next)));
                CHECK(screen.says(language.text(TextId::desk_title)));
                CHECK(screen.says(state.reader));
                CHECK(screen.says(language.text(TextId::welcome_caution)));
                CHECK(screen.says(language.text(TextId::camera_picture)) == camera);
                CHECK(screen.tap(state, TextId::button_by_name) == ui::Actions{ui::FindByName{}});
            }
}

TEST_CASE("welcome: large letters leave no way out, on whatever page it is")
{
    const auto& language = test::language("es");
    auto state = test::state_of(ScreenId::Welcome, language);
    state.desk_open = true;
    state.by_aisle = true;
    for (const int percent : {200, 300}) {
        CAPTURE(percent);
        test::Headless screen({800, 1280}, percent, "es");
        for (const TextId way :
             {TextId::button_choose_by_name, TextId::find_by_aisle, TextId::button_ways, TextId::desk_title}) {
            CAPTURE(language.text(way));
            bool found = false;
            for (state.page = 0; state.page < 20 && !found; ++state.page) {
                screen.frame(state);
                found = screen.says(language.text(way));
            }
            CHECK(found);
        }
    }
}
