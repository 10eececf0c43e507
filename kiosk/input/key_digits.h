// From a key of SDL to a key of the wedge: by its place on the keyboard, because the letters on it depend on the
// country.
#pragma once

#include "kiosk/input/wedge.h"

#include <SDL_scancode.h>

#include <cstdint>

namespace kiosk {

/// Kind and character of a key that went down. `modifiers` is SDL_Keysym::mod. Time, blind and tag are the caller's.
/// Digit row and keypad are digits whatever Shift does (on French keyboards digits need it), with the sign of a US
/// keyboard beside them in Key::sign; letters and signs are those of a US keyboard, the one that scanners imitate
/// unless told otherwise. Keys that type nothing have the character of key_names.h, 0 where they have no name.
[[nodiscard]] Key key_from(SDL_Scancode scancode, std::uint16_t modifiers);

} // namespace kiosk
