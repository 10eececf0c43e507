#include "catalog/read/text.h"

#include <doctest/doctest.h>

using catalog::tidy;
using catalog::to_utf8;
using namespace std::string_literals;

// Sources: the Unicode Standard, chapter 3 (UTF-8, UTF-16) and section 23.8 (marks); WHATWG Encoding Standard, index
// windows-1252.
TEST_CASE("text: the encodings in which spreadsheets save are told apart")
{
    struct Case {
        const char* why;
        std::string bytes;
        std::string utf8;
    };
    const Case cases[] = {
        {"nothing", "", ""},
        {"ASCII", "oats", "oats"},
        {"UTF-8 without a mark", "cr\xC3\xA8me", "crème"},
        {"UTF-8 with a mark",
         "\xEF\xBB\xBF"
         "cr\xC3\xA8me",
         "crème"},
        {"UTF-8 with a mark is not taken for Windows-1252",
         "\xEF\xBB\xBF"
         "cr\xE8me",
         "cr\uFFFDme"},
        {"Windows-1252", "cr\xE8me", "crème"},
        {"Windows-1252, the places where Latin-1 has none", "\x80\x85\x93oat\x94\x9F", "€…\u201Coat\u201DŸ"},
        {"no letter in Windows-1252", "\x81 \xE8", "\uFFFD è"},
        {"both kinds: broken UTF-8", "cr\xC3\xA8me cr\xE8me", "crème cr\uFFFDme"},
        {"an overlong form is no UTF-8", "\xC0\xAF", "À¯"},
        {"UTF-16, low byte first",
         "\xFF\xFE"
         "c\0r\0\xE8\0"s,
         "crè"},
        {"UTF-16, high byte first",
         "\xFE\xFF"
         "\0c\0r\0\xE8"s,
         "crè"},
        {"UTF-16, a letter of two units", "\xFF\xFE\x3D\xD8\x00\xDE"s, "😀"},
        {"UTF-16, half a pair",
         "\xFF\xFE\x3D\xD8"
         "a\0"s,
         "\uFFFDa"},
        {"UTF-16, an odd byte",
         "\xFF\xFE"
         "a\0b"s,
         "a\uFFFD"},
        {"line ends of all kinds", "a\r\nb\rc\n\r\n", "a\nb\nc\n\n"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(to_utf8(c.bytes) == c.utf8);
    }
}

// Sources: Unicode Standard Annex 15 (NFC), example of U+0065 U+0301; general categories of UnicodeData.txt.
TEST_CASE("text: a cell is kept in one form, or refused")
{
    struct Case {
        const char* why;
        std::string cell;
        std::optional<std::string> kept;
    };
    const Case cases[] = {
        {"as it is", "Oat rounds", "Oat rounds"},
        {"blanks at the ends and in a row", "  Oat   rounds ", "Oat rounds"},
        {"line breaks and tabs", "Oats,\n\thoney\n", "Oats, honey"},
        {"blanks of other widths", "39\u00A0g \u202F\u3000x", "39 g x"},
        {"only blanks", " \n\u00A0", ""},
        {"a letter and its mark apart", "cre\u0301me", "cr\u00E9me"},
        {"two marks", "a\u0323\u0302", "\u1EAD"},
        {"signs without width", "\uFEFFho\u00ADney\u200B", "honey"},
        {"a joiner between letters means something", "\u0646\u200C\u0646", "\u0646\u200C\u0646"},
        {"a control character", "Oat\x07s", std::nullopt},
        {"what a terminal obeys", "\x1B[2J", std::nullopt},
        {"delete", "\x7F", std::nullopt},
        {"a second control character set", "\u009B", std::nullopt},
        {"a nought", "a\0b"s, std::nullopt},
        {"text turned round", "\u202Estao", std::nullopt},
        {"an unreadable letter", "cr\uFFFDme", std::nullopt},
        {"private signs", "\uE000", std::nullopt},
        {"no sign at all", "\uFFFE", std::nullopt},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(tidy(c.cell) == c.kept);
        CHECK(catalog::shown(c.cell).find('\x1B') == std::string::npos);
    }
    CHECK(catalog::shown("\x1B[2J oats") == "\uFFFD[2J oats");
    CHECK(catalog::letters_in("crème") == 5);
}
