#include "kiosk/input/letter_keys.h"

namespace kiosk {
namespace {

constexpr SDL_Keycode first_letter_of_latin_1 = 0xDF;
constexpr SDL_Keycode last_letter_of_latin_1 = 0xFF;
constexpr SDL_Keycode division_sign = 0xF7; // the one between them that is no letter

std::string one(char letter)
{
    return std::string(1, letter);
}

} // namespace

std::optional<std::string> letter_of(const SDL_Keysym& key)
{
    if ((key.mod & (KMOD_CTRL | KMOD_ALT | KMOD_GUI | KMOD_MODE)) != 0)
        return std::nullopt;
    const SDL_Keycode sym = key.sym;
    if (sym == SDLK_SPACE || (sym >= SDLK_a && sym <= SDLK_z) || (sym >= SDLK_0 && sym <= SDLK_9))
        return one(static_cast<char>(sym));
    if (sym == SDLK_KP_0)
        return one('0');
    if (sym >= SDLK_KP_1 && sym <= SDLK_KP_9)
        return one(static_cast<char>('1' + (sym - SDLK_KP_1)));
    if (sym >= first_letter_of_latin_1 && sym <= last_letter_of_latin_1 && sym != division_sign)
        return std::string{static_cast<char>(0xC3), static_cast<char>(sym - 0x40)}; // U+00C0 to U+00FF in UTF-8
    return std::nullopt;
}

} // namespace kiosk
