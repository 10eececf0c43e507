#include "kiosk/input/key_digits.h"

#include <SDL_keycode.h>

#include <optional>

namespace kiosk {
namespace {

/// A key of a US keyboard and what it types alone and with Shift.
struct Row {
    SDL_Scancode scancode;
    char plain;
    char shifted;
};

constexpr Row signs[] = {
    {SDL_SCANCODE_MINUS, '-', '_'},        {SDL_SCANCODE_EQUALS, '=', '+'},      {SDL_SCANCODE_LEFTBRACKET, '[', '{'},
    {SDL_SCANCODE_RIGHTBRACKET, ']', '}'}, {SDL_SCANCODE_BACKSLASH, '\\', '|'},  {SDL_SCANCODE_SEMICOLON, ';', ':'},
    {SDL_SCANCODE_APOSTROPHE, '\'', '"'},  {SDL_SCANCODE_GRAVE, '`', '~'},       {SDL_SCANCODE_COMMA, ',', '<'},
    {SDL_SCANCODE_PERIOD, '.', '>'},       {SDL_SCANCODE_SLASH, '/', '?'},       {SDL_SCANCODE_SPACE, ' ', ' '},
    {SDL_SCANCODE_KP_MINUS, '-', '-'},     {SDL_SCANCODE_KP_PLUS, '+', '+'},     {SDL_SCANCODE_KP_PERIOD, '.', '.'},
    {SDL_SCANCODE_KP_DIVIDE, '/', '/'},    {SDL_SCANCODE_KP_MULTIPLY, '*', '*'},
};

std::optional<char> digit_of(SDL_Scancode scancode)
{
    if (scancode == SDL_SCANCODE_0 || scancode == SDL_SCANCODE_KP_0)
        return '0';
    if (scancode >= SDL_SCANCODE_1 && scancode <= SDL_SCANCODE_9)
        return static_cast<char>('1' + (scancode - SDL_SCANCODE_1));
    if (scancode >= SDL_SCANCODE_KP_1 && scancode <= SDL_SCANCODE_KP_9)
        return static_cast<char>('1' + (scancode - SDL_SCANCODE_KP_1));
    return std::nullopt;
}

std::optional<char> letter_or_sign_of(SDL_Scancode scancode, std::uint16_t modifiers)
{
    const bool shift = (modifiers & KMOD_SHIFT) != 0;
    if (scancode >= SDL_SCANCODE_A && scancode <= SDL_SCANCODE_Z) {
        const bool capital = shift != ((modifiers & KMOD_CAPS) != 0);
        return static_cast<char>((capital ? 'A' : 'a') + (scancode - SDL_SCANCODE_A));
    }
    for (const Row& row : signs)
        if (row.scancode == scancode)
            return shift ? row.shifted : row.plain;
    return std::nullopt;
}

bool is_end(SDL_Scancode scancode)
{
    return scancode == SDL_SCANCODE_RETURN || scancode == SDL_SCANCODE_RETURN2 || scancode == SDL_SCANCODE_KP_ENTER ||
           scancode == SDL_SCANCODE_TAB || scancode == SDL_SCANCODE_KP_TAB;
}

bool is_modifier(SDL_Scancode scancode)
{
    return (scancode >= SDL_SCANCODE_LCTRL && scancode <= SDL_SCANCODE_RGUI) || scancode == SDL_SCANCODE_CAPSLOCK ||
           scancode == SDL_SCANCODE_NUMLOCKCLEAR || scancode == SDL_SCANCODE_MODE;
}

Key character(char c)
{
    Key key;
    key.kind = Key::Kind::Character;
    key.character = c;
    return key;
}

Key of_kind(Key::Kind kind)
{
    Key key;
    key.kind = kind;
    return key;
}

/// Where AltGr types the "]" of an AIM identifier: German 9, French minus, Spanish right bracket. From memory.
bool is_bracket_under_altgr(SDL_Scancode scancode)
{
    return scancode == SDL_SCANCODE_9 || scancode == SDL_SCANCODE_MINUS || scancode == SDL_SCANCODE_RIGHTBRACKET;
}

/// Scanners type control characters with Ctrl: line end as Ctrl+J or Ctrl+M, the separator GS (0x1D) as Ctrl+].
Key with_control(SDL_Scancode scancode)
{
    if (scancode == SDL_SCANCODE_RIGHTBRACKET)
        return character('\x1d');
    const bool line_end = scancode == SDL_SCANCODE_J || scancode == SDL_SCANCODE_M;
    return of_kind(line_end ? Key::Kind::End : Key::Kind::Other);
}

} // namespace

Key key_from(SDL_Scancode scancode, std::uint16_t modifiers)
{
    if (is_modifier(scancode))
        return of_kind(Key::Kind::Modifier);
    // AltGr first: some systems report it as Ctrl and Alt together.
    if ((modifiers & (KMOD_RALT | KMOD_MODE)) != 0)
        return is_bracket_under_altgr(scancode) ? character(']') : of_kind(Key::Kind::Other);
    if ((modifiers & (KMOD_LALT | KMOD_GUI)) != 0)
        return of_kind(Key::Kind::Other);
    if ((modifiers & KMOD_CTRL) != 0)
        return with_control(scancode);
    if (is_end(scancode))
        return of_kind(Key::Kind::End);
    if (const auto digit = digit_of(scancode))
        return character(*digit);
    if (const auto other = letter_or_sign_of(scancode, modifiers))
        return character(*other);
    return of_kind(Key::Kind::Other);
}

} // namespace kiosk
