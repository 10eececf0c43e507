#include "kiosk/input/key_digits.h"
#include "kiosk/input/key_names.h"

#include <SDL_keycode.h>
#include <doctest/doctest.h>

#include <algorithm>
#include <string>

using kiosk::Key;
using kiosk::key_from;

namespace {

/// The character of a key by its name in the settings.
char named(const char* name)
{
    return kiosk::keys_named(name).value().at(0);
}

} // namespace

// Source: USB HID Usage Tables, chapter 10 (keyboard page), whose numbers SDL's scancodes are.
TEST_CASE("key_digits: a key is what stands on it in the United States, digits whatever Shift does")
{
    struct Case {
        std::string why;
        SDL_Scancode scancode;
        std::uint16_t modifiers;
        Key::Kind kind;
        char character;
    };
    const auto character = Key::Kind::Character;
    const Case cases[] = {
        {"digit row", SDL_SCANCODE_1, 0, character, '1'},
        {"last of the digit row", SDL_SCANCODE_9, 0, character, '9'},
        {"zero comes after nine", SDL_SCANCODE_0, 0, character, '0'},
        {"digits need Shift on French keyboards", SDL_SCANCODE_3, KMOD_LSHIFT, character, '3'},
        {"and stay digits under Caps Lock", SDL_SCANCODE_3, KMOD_CAPS, character, '3'},
        {"keypad", SDL_SCANCODE_KP_1, 0, character, '1'},
        {"keypad with Num Lock", SDL_SCANCODE_KP_9, KMOD_NUM, character, '9'},
        {"keypad zero", SDL_SCANCODE_KP_0, 0, character, '0'},
        {"small letter", SDL_SCANCODE_E, 0, character, 'e'},
        {"capital letter", SDL_SCANCODE_E, KMOD_RSHIFT, character, 'E'},
        {"Caps Lock and Shift undo each other", SDL_SCANCODE_E, KMOD_CAPS | KMOD_LSHIFT, character, 'e'},
        {"the bracket of identifiers", SDL_SCANCODE_RIGHTBRACKET, 0, character, ']'},
        {"the same on a German keyboard", SDL_SCANCODE_9, KMOD_RALT, character, ']'},
        {"the same on a French keyboard", SDL_SCANCODE_MINUS, KMOD_RALT, character, ']'},
        {"sign with Shift", SDL_SCANCODE_SEMICOLON, KMOD_LSHIFT, character, ':'},
        {"separator GS", SDL_SCANCODE_RIGHTBRACKET, KMOD_LCTRL, character, '\x1d'},
        {"Enter", SDL_SCANCODE_RETURN, 0, Key::Kind::End, '\r'},
        {"Enter of the keypad", SDL_SCANCODE_KP_ENTER, 0, Key::Kind::End, '\r'},
        {"Tab", SDL_SCANCODE_TAB, 0, Key::Kind::End, '\t'},
        {"line feed by Ctrl", SDL_SCANCODE_J, KMOD_LCTRL, Key::Kind::End, '\n'},
        {"carriage return by Ctrl", SDL_SCANCODE_M, KMOD_LCTRL, Key::Kind::End, '\r'},
        {"Shift itself", SDL_SCANCODE_LSHIFT, KMOD_LSHIFT, Key::Kind::Modifier, 0},
        {"AltGr itself", SDL_SCANCODE_RALT, KMOD_RALT, Key::Kind::Modifier, 0},
        {"Num Lock", SDL_SCANCODE_NUMLOCKCLEAR, 0, Key::Kind::Modifier, 0},
        {"Escape", SDL_SCANCODE_ESCAPE, 0, Key::Kind::Other, named("Escape")},
        {"Escape by Ctrl", SDL_SCANCODE_LEFTBRACKET, KMOD_LCTRL, Key::Kind::Other, named("ESC")},
        {"Backspace", SDL_SCANCODE_BACKSPACE, 0, Key::Kind::Other, named("Backspace")},
        {"Delete", SDL_SCANCODE_DELETE, 0, Key::Kind::Other, named("Delete")},
        {"arrow", SDL_SCANCODE_LEFT, 0, Key::Kind::Other, named("Left")},
        {"page key", SDL_SCANCODE_PAGEDOWN, 0, Key::Kind::Other, named("PageDown")},
        {"first function key", SDL_SCANCODE_F1, 0, Key::Kind::Other, named("F1")},
        {"twelfth", SDL_SCANCODE_F12, 0, Key::Kind::Other, named("F12")},
        {"thirteenth, which stands elsewhere", SDL_SCANCODE_F13, 0, Key::Kind::Other, named("F13")},
        {"last function key", SDL_SCANCODE_F24, 0, Key::Kind::Other, named("F24")},
        {"control character STX", SDL_SCANCODE_B, KMOD_LCTRL, Key::Kind::Other, named("STX")},
        {"control character SUB", SDL_SCANCODE_Z, KMOD_RCTRL, Key::Kind::Other, named("SUB")},
        {"a key that no US keyboard has", SDL_SCANCODE_NONUSBACKSLASH, 0, Key::Kind::Other, 0},
        {"a number typed by Alt and keypad", SDL_SCANCODE_KP_4, KMOD_LALT, Key::Kind::Other, 0},
        {"no key at all", SDL_SCANCODE_UNKNOWN, 0, Key::Kind::Other, 0},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const Key key = key_from(c.scancode, c.modifiers);
        CHECK(key.kind == c.kind);
        CHECK(key.character == c.character);
    }
}

// Source: ASCII (ISO/IEC 646) for the characters; that a US keyboard types each of them with one key is common
// practice.
TEST_CASE("key_digits: every character of an element string or a link has its key, and no two have the same")
{
    std::string typed;
    for (int code = SDL_SCANCODE_A; code <= SDL_SCANCODE_SLASH; ++code)
        for (const int shift : {0, static_cast<int>(KMOD_LSHIFT)}) {
            const Key key = key_from(static_cast<SDL_Scancode>(code), static_cast<std::uint16_t>(shift));
            if (key.kind == Key::Kind::Character)
                typed += key.sign != 0 ? key.sign : key.character;
        }
    for (char c = ' '; c < '\x7f'; ++c) {
        CAPTURE(c);
        CHECK(std::ranges::count(typed, c) == (c == ' ' ? 2 : 1)); // a blank is a blank with Shift, too
    }
}
