// What a person's key types where a name is asked for: by its letter, not by its place on the keyboard.
#pragma once

#include <SDL_keyboard.h>

#include <optional>
#include <string>

namespace kiosk {

/// A letter, digit or blank in UTF-8; nothing for every other key and for one pressed with Ctrl, Alt or AltGr. Letters
/// come small: `SDL_Keysym::sym` does not know of Shift.
[[nodiscard]] std::optional<std::string> letter_of(const SDL_Keysym& key);

} // namespace kiosk
