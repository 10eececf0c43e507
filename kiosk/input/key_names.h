// Names of keys and control characters that a scanner may put before or behind each code, for the settings.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace kiosk {

/// Characters of keys that type none, as Key::character has them: control characters are those of ASCII (what Ctrl and
/// a letter type), keys beyond ASCII count from here.
inline constexpr unsigned char first_key_beyond = 0x80;
enum class KeyBeyond : unsigned char {
    Insert = first_key_beyond,
    Home,
    End,
    PageUp,
    PageDown,
    Up,
    Down,
    Left,
    Right,
    F1 ///< and the 23 behind it
};
inline constexpr int function_keys = 24;

/// What a scanner puts before and behind each code beside Enter or Tab, one character a key; empty: nothing.
struct ScannerKeys {
    std::string prefix;
    std::string suffix;
    bool operator==(const ScannerKeys&) const = default;
};

inline constexpr std::size_t most_scanner_keys = 8;

/// Keys with blanks between, at most `most_scanner_keys`: names ("STX", "Enter", "F8", "PageDown"), and characters in
/// double quotes ("\"~A\""), letters and signs only: a digit could not be told from the code. Nothing for anything
/// else.
[[nodiscard]] std::optional<std::string> keys_named(std::string_view text);

} // namespace kiosk
