#include "kiosk/input/key_names.h"

#include <doctest/doctest.h>

#include <optional>
#include <string>

using kiosk::keys_named;

// Source of the numbers of control characters: ASCII (ISO/IEC 646).
TEST_CASE("key_names: keys by name and characters in quotes, in the order written")
{
    struct Case {
        const char* why;
        const char* text;
        std::optional<std::string> keys;
    };
    const Case cases[] = {
        {"nothing", "", ""},
        {"a control character", "STX", "\x02"},
        {"two", "SOH ETX", "\x01\x03"},
        {"the last one", "US", "\x1f"},
        {"a key", "Enter", "\r"},
        {"characters", "\"~A\"", "~A"},
        {"all kinds, and blanks between", "  DLE\t\"x\"  Tab", std::nullopt}, // settings are trimmed before
        {"all kinds", "DLE\t\"x\"  Tab", "\x10x\t"},
        {"nothing between them", "DLE\"x\"Tab", "\x10x\t"},
        {"first function key", "F1", "\x89"},
        {"last function key", "F24", "\xA0"},
        {"an arrow", "Down", "\x86"},
        {"eight keys", "\"abcdefgh\"", "abcdefgh"},
        {"nine keys", "\"abcdefghi\"", std::nullopt},
        {"no such function key", "F25", std::nullopt},
        {"nor this", "F0", std::nullopt},
        {"nor this", "F01", std::nullopt},
        {"nor this", "F", std::nullopt},
        {"nor this", "F1x", std::nullopt},
        {"a name in small letters", "stx", std::nullopt},
        {"a sign without quotes", "?", std::nullopt},
        {"a quote that does not end", "\"ab", std::nullopt},
        {"nothing in quotes", "\"\"", std::nullopt},
        {"a blank in quotes", "\"a b\"", std::nullopt},
        {"a digit, which could be the code's", "\"A1\"", std::nullopt},
        {"a letter beyond ASCII", "\"\xC3\xA9\"", std::nullopt},
        {"the character that ends strings", "NUL", std::nullopt},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(keys_named(c.text) == c.keys);
    }
}
