#include "kiosk/input/key_names.h"

#include <algorithm>
#include <charconv>
#include <system_error>
#include <utility>

namespace kiosk {
namespace {

constexpr char of(KeyBeyond key)
{
    return static_cast<char>(key);
}

/// Control characters by their names in ASCII (ISO/IEC 646), and what keyboards call some of them.
constexpr std::pair<std::string_view, char> names[] = {
    {"SOH", 1},
    {"STX", 2},
    {"ETX", 3},
    {"EOT", 4},
    {"ENQ", 5},
    {"ACK", 6},
    {"BEL", 7},
    {"BS", 8},
    {"HT", 9},
    {"LF", 10},
    {"VT", 11},
    {"FF", 12},
    {"CR", 13},
    {"SO", 14},
    {"SI", 15},
    {"DLE", 16},
    {"DC1", 17},
    {"DC2", 18},
    {"DC3", 19},
    {"DC4", 20},
    {"NAK", 21},
    {"SYN", 22},
    {"ETB", 23},
    {"CAN", 24},
    {"EM", 25},
    {"SUB", 26},
    {"ESC", 27},
    {"FS", 28},
    {"GS", 29},
    {"RS", 30},
    {"US", 31},
    {"Tab", 9},
    {"Enter", 13},
    {"Escape", 27},
    {"Backspace", 8},
    {"Delete", 127},
    {"Insert", of(KeyBeyond::Insert)},
    {"Home", of(KeyBeyond::Home)},
    {"End", of(KeyBeyond::End)},
    {"PageUp", of(KeyBeyond::PageUp)},
    {"PageDown", of(KeyBeyond::PageDown)},
    {"Up", of(KeyBeyond::Up)},
    {"Down", of(KeyBeyond::Down)},
    {"Left", of(KeyBeyond::Left)},
    {"Right", of(KeyBeyond::Right)},
};

std::optional<char> function_key(std::string_view name)
{
    int number = 0;
    if (!name.starts_with('F') || name.starts_with("F0"))
        return std::nullopt;
    const char* const end = name.data() + name.size();
    const auto [stop, error] = std::from_chars(name.data() + 1, end, number);
    if (error != std::errc{} || stop != end || number < 1 || number > function_keys)
        return std::nullopt;
    return static_cast<char>(static_cast<int>(KeyBeyond::F1) + number - 1);
}

std::optional<char> key_named(std::string_view name)
{
    const auto* const found = std::ranges::find(names, name, &std::pair<std::string_view, char>::first);
    return found == std::ranges::end(names) ? function_key(name) : std::optional(found->second);
}

bool is_letter_or_sign(char c)
{
    return c > ' ' && c < '\x7f' && c != '"' && !(c >= '0' && c <= '9');
}

/// Takes what stands in quotes off the front, quotes and all.
std::optional<std::string_view> take_quoted(std::string_view& text)
{
    const auto end = text.find('"', 1);
    if (end == std::string_view::npos || end == 1)
        return std::nullopt;
    const auto inside = text.substr(1, end - 1);
    text.remove_prefix(end + 1);
    return std::ranges::all_of(inside, is_letter_or_sign) ? std::optional(inside) : std::nullopt;
}

} // namespace

std::optional<std::string> keys_named(std::string_view text)
{
    constexpr std::string_view blanks = " \t";
    std::string keys;
    while (!text.empty()) {
        if (text.starts_with('"')) {
            const auto quoted = take_quoted(text);
            if (!quoted)
                return std::nullopt;
            keys += *quoted;
        } else {
            const auto name = text.substr(0, text.find_first_of(" \t\""));
            const auto key = key_named(name);
            if (!key)
                return std::nullopt;
            keys += *key;
            text.remove_prefix(name.size());
        }
        text.remove_prefix(std::min(text.find_first_not_of(blanks), text.size()));
    }
    return keys.size() <= most_scanner_keys ? std::optional(keys) : std::nullopt;
}

} // namespace kiosk
