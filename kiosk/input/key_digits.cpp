#include "kiosk/input/key_digits.h"

#include "kiosk/input/key_names.h"

#include <SDL_keycode.h>

#include <optional>
#include <string_view>

namespace kiosk {
namespace {

/// A key of a US keyboard and what it types alone and with Shift.
struct Row {
    SDL_Scancode scancode;
    char plain;
    char shifted;
};

/// What a US keyboard types with Shift on its digit row, from 0 to 9.
constexpr std::string_view signs_of_digits = ")!@#$%^&*(";

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

bool is_tab(SDL_Scancode scancode)
{
    return scancode == SDL_SCANCODE_TAB || scancode == SDL_SCANCODE_KP_TAB;
}

bool is_end(SDL_Scancode scancode)
{
    return scancode == SDL_SCANCODE_RETURN || scancode == SDL_SCANCODE_RETURN2 || scancode == SDL_SCANCODE_KP_ENTER ||
           is_tab(scancode);
}

bool is_modifier(SDL_Scancode scancode)
{
    return (scancode >= SDL_SCANCODE_LCTRL && scancode <= SDL_SCANCODE_RGUI) || scancode == SDL_SCANCODE_CAPSLOCK ||
           scancode == SDL_SCANCODE_NUMLOCKCLEAR || scancode == SDL_SCANCODE_MODE;
}

Key of_kind(Key::Kind kind, char c = 0)
{
    Key key;
    key.kind = kind;
    key.character = c;
    return key;
}

Key character(char c)
{
    return of_kind(Key::Kind::Character, c);
}

/// Keys that type nothing, and their names (key_names.h).
struct NamedKey {
    SDL_Scancode scancode;
    int character;
};

constexpr NamedKey named_keys[] = {
    {SDL_SCANCODE_ESCAPE, 0x1b},
    {SDL_SCANCODE_BACKSPACE, 0x08},
    {SDL_SCANCODE_DELETE, 0x7f},
    {SDL_SCANCODE_INSERT, static_cast<int>(KeyBeyond::Insert)},
    {SDL_SCANCODE_HOME, static_cast<int>(KeyBeyond::Home)},
    {SDL_SCANCODE_END, static_cast<int>(KeyBeyond::End)},
    {SDL_SCANCODE_PAGEUP, static_cast<int>(KeyBeyond::PageUp)},
    {SDL_SCANCODE_PAGEDOWN, static_cast<int>(KeyBeyond::PageDown)},
    {SDL_SCANCODE_UP, static_cast<int>(KeyBeyond::Up)},
    {SDL_SCANCODE_DOWN, static_cast<int>(KeyBeyond::Down)},
    {SDL_SCANCODE_LEFT, static_cast<int>(KeyBeyond::Left)},
    {SDL_SCANCODE_RIGHT, static_cast<int>(KeyBeyond::Right)},
};

Key named(SDL_Scancode scancode)
{
    constexpr int f1 = static_cast<int>(KeyBeyond::F1);
    constexpr int f13 = f1 + 12;
    int named = 0;
    for (const NamedKey& row : named_keys)
        if (row.scancode == scancode)
            named = row.character;
    if (scancode >= SDL_SCANCODE_F1 && scancode <= SDL_SCANCODE_F12)
        named = f1 + (scancode - SDL_SCANCODE_F1);
    else if (scancode >= SDL_SCANCODE_F13 && scancode <= SDL_SCANCODE_F24)
        named = f13 + (scancode - SDL_SCANCODE_F13);
    return of_kind(Key::Kind::Other, static_cast<char>(named));
}

/// Where AltGr types the "]" of an AIM identifier: German 9, French minus, Spanish right bracket. From memory.
bool is_bracket_under_altgr(SDL_Scancode scancode)
{
    return scancode == SDL_SCANCODE_9 || scancode == SDL_SCANCODE_MINUS || scancode == SDL_SCANCODE_RIGHTBRACKET;
}

/// Scanners type control characters with Ctrl: line end as Ctrl+J or Ctrl+M, the separator GS (0x1D) as Ctrl+]. Source
/// of the places: ASCII (ISO/IEC 646), where a control character is 64 below the letter or sign that is typed.
Key with_control(SDL_Scancode scancode)
{
    if (scancode == SDL_SCANCODE_RIGHTBRACKET)
        return character('\x1d');
    if (scancode == SDL_SCANCODE_LEFTBRACKET)
        return of_kind(Key::Kind::Other, '\x1b');
    if (scancode < SDL_SCANCODE_A || scancode > SDL_SCANCODE_Z)
        return of_kind(Key::Kind::Other);
    const bool line_end = scancode == SDL_SCANCODE_J || scancode == SDL_SCANCODE_M;
    return of_kind(line_end ? Key::Kind::End : Key::Kind::Other, static_cast<char>(scancode - SDL_SCANCODE_A + 1));
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
        return of_kind(Key::Kind::End, is_tab(scancode) ? '\t' : '\r');
    if (const auto digit = digit_of(scancode)) {
        Key key = character(*digit);
        const bool of_row = scancode >= SDL_SCANCODE_1 && scancode <= SDL_SCANCODE_0;
        if (of_row && (modifiers & KMOD_SHIFT) != 0)
            key.sign = signs_of_digits[static_cast<std::size_t>(*digit - '0')];
        return key;
    }
    if (const auto other = letter_or_sign_of(scancode, modifiers))
        return character(*other);
    return named(scancode);
}

} // namespace kiosk
