// Texts that no reader of figures may take, crash on or copy whole: what a broken or spiteful sheet can hold.
#pragma once

#include <string>
#include <vector>

namespace test {

/// A text and why it is hostile.
struct HostileText {
    std::string why, text;
};

/// Texts that are no number, no measure and no date, however they begin.
[[nodiscard]] inline std::vector<HostileText> hostile_texts()
{
    return {
        {"a million digits", std::string(1'000'000, '9')},
        {"a million letters", std::string(1'000'000, 'x')},
        {"a million zeros behind the point", "0." + std::string(1'000'000, '0')},
        {"a million blanks in front of nothing", std::string(1'000'000, ' ')},
        {"a NUL byte alone", std::string(1, '\0')},
        {"a NUL byte behind a number", std::string("5\0", 2)},
        {"a NUL byte inside a number", std::string("1\0005", 3)},
        {"full-width digits", "\xEF\xBC\x95"},
        {"Arabic-Indic digits", "\xD9\xA5"},
        {"Devanagari digits", "\xE0\xA5\xAB"},
        {"a superscript two", "\xC2\xB2"},
        {"a vulgar half", "\xC2\xBD"},
        {"a minus sign that is no hyphen", "\xE2\x88\x92"
                                           "5"},
        {"a no-break space before a number", "\xC2\xA0"
                                             "5"},
        {"a zero-width space inside a number", "1\xE2\x80\x8B"
                                               "5"},
        {"a right-to-left mark", "\xE2\x80\x8F"
                                 "5"},
        {"a byte order mark", "\xEF\xBB\xBF"
                              "5"},
        {"bytes that are no UTF-8", "\xFF\xFE\x80"},
        {"half of a UTF-8 letter", "5\xE2\x82"},
        {"a line feed", "5\n6"},
        {"a tab", "5\t"},
        {"a formula", "=5+5"},
        {"a spreadsheet's error", "#REF!"},
        {"a format string", "%s%n%d"},
        {"an infinity", "inf"},
    };
}

} // namespace test
