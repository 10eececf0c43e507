#include "kiosk/input/letter_keys.h"

#include <SDL_keycode.h>
#include <doctest/doctest.h>

#include <optional>
#include <string>

// Source of the letters beyond ASCII: the Unicode Standard, block Latin-1 Supplement, whose numbers SDL's key codes
// are.
TEST_CASE("letter_keys: letters, digits and the blank are typed, in UTF-8, and nothing else")
{
    struct Case {
        std::string why;
        SDL_Keycode sym;
        int modifiers;
        std::optional<std::string> typed;
    };
    const Case cases[] = {
        {"a letter", SDLK_a, 0, "a"},
        {"with Shift", SDLK_z, KMOD_LSHIFT, "z"},
        {"with Caps Lock and Num Lock", SDLK_q, KMOD_CAPS | KMOD_NUM, "q"},
        {"a digit", SDLK_7, 0, "7"},
        {"a digit of the keypad", SDLK_KP_9, KMOD_NUM, "9"},
        {"its zero", SDLK_KP_0, KMOD_NUM, "0"},
        {"the blank", SDLK_SPACE, 0, " "},
        {"a letter of a Spanish keyboard", 0xF1, 0, "ñ"},
        {"the first beyond ASCII", 0xDF, 0, "ß"},
        {"the last of Latin-1", 0xFF, 0, "ÿ"},
        {"a sign among them", 0xF7, 0, std::nullopt},
        {"a sign before them", 0xBF, 0, std::nullopt},
        {"a sign", SDLK_SEMICOLON, 0, std::nullopt},
        {"Enter", SDLK_RETURN, 0, std::nullopt},
        {"Backspace", SDLK_BACKSPACE, 0, std::nullopt},
        {"an arrow", SDLK_LEFT, 0, std::nullopt},
        {"a command", SDLK_q, KMOD_LCTRL, std::nullopt},
        {"AltGr", SDLK_e, KMOD_RALT, std::nullopt},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        SDL_Keysym key{};
        key.sym = c.sym;
        key.mod = static_cast<Uint16>(c.modifiers);
        CHECK(kiosk::letter_of(key) == c.typed);
    }
}
