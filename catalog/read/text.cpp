#include "catalog/read/text.h"

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <memory>
#include <utf8proc.h>

namespace catalog {
namespace {

constexpr char32_t replacement = 0xFFFD;

std::uint8_t byte(char c)
{
    return static_cast<std::uint8_t>(c);
}

void append(std::string& text, char32_t letter)
{
    utf8proc_uint8_t bytes[4];
    const auto length = utf8proc_encode_char(static_cast<utf8proc_int32_t>(letter), bytes);
    text.append(reinterpret_cast<const char*>(bytes), static_cast<std::size_t>(length));
}

/// Takes one letter off the front of UTF-8; one byte and U+FFFD where there is none.
char32_t take_letter(std::string_view& text)
{
    utf8proc_int32_t letter = -1;
    const auto length = utf8proc_iterate(reinterpret_cast<const utf8proc_uint8_t*>(text.data()),
                                         static_cast<utf8proc_ssize_t>(text.size()), &letter);
    text.remove_prefix(length > 0 ? static_cast<std::size_t>(length) : 1);
    return length > 0 ? static_cast<char32_t>(letter) : replacement;
}

/// The 32 places in which Windows-1252 differs from Latin-1; 0 where it has no letter.
constexpr char16_t windows_1252[] = {
    0x20AC, 0,      0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
    0x2039, 0x0152, 0,      0x017D, 0,      0,      0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
    0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0,      0x017E, 0x0178,
};

std::string from_windows_1252(std::string_view bytes)
{
    std::string text;
    text.reserve(bytes.size() + bytes.size() / 8);
    for (const char c : bytes) {
        char32_t letter = byte(c);
        if (letter >= 0x80 && letter < 0xA0)
            letter = windows_1252[letter - 0x80];
        append(text, letter == 0 && c != '\0' ? replacement : letter);
    }
    return text;
}

std::string from_utf8(std::string_view bytes)
{
    std::string text;
    text.reserve(bytes.size());
    while (!bytes.empty())
        append(text, take_letter(bytes));
    return text;
}

std::string from_utf16(std::string_view bytes, bool low_first)
{
    const auto unit = [&](std::size_t at) {
        const unsigned first = byte(bytes[at]);
        const unsigned second = byte(bytes[at + 1]);
        return static_cast<char32_t>(low_first ? second << 8U | first : first << 8U | second);
    };
    const auto is_high = [](char32_t c) { return c >= 0xD800 && c < 0xDC00; };
    const auto is_low = [](char32_t c) { return c >= 0xDC00 && c < 0xE000; };
    std::string text;
    text.reserve(bytes.size());
    std::size_t at = 0;
    for (; at + 1 < bytes.size(); at += 2) {
        const char32_t letter = unit(at);
        if (is_high(letter) && at + 3 < bytes.size() && is_low(unit(at + 2))) {
            append(text, 0x10000 + ((letter - 0xD800) << 10U) + (unit(at + 2) - 0xDC00));
            at += 2;
        } else {
            append(text, is_high(letter) || is_low(letter) ? replacement : letter);
        }
    }
    if (at < bytes.size())
        append(text, replacement); // half a letter at the end
    return text;
}

/// Windows-1252 where there are bytes above 127 and none of them is part of a UTF-8 letter. A text that has both kinds
/// is UTF-8 gone wrong: better some unreadable letters, told by their cells, than wrong ones taken for right.
bool is_windows_1252(std::string_view bytes)
{
    bool broken = false;
    while (!bytes.empty()) {
        const bool ascii = byte(bytes.front()) < 0x80;
        const auto before = bytes.size();
        const char32_t letter = take_letter(bytes);
        if (!ascii && before - bytes.size() > 1)
            return false;
        broken = broken || letter == replacement;
    }
    return broken;
}

std::string decoded(std::string_view bytes)
{
    if (bytes.starts_with("\xEF\xBB\xBF"))
        return from_utf8(bytes.substr(3));
    if (bytes.starts_with("\xFF\xFE"))
        return from_utf16(bytes.substr(2), true);
    if (bytes.starts_with("\xFE\xFF"))
        return from_utf16(bytes.substr(2), false);
    return is_windows_1252(bytes) ? from_windows_1252(bytes) : from_utf8(bytes);
}

/// "\r\n" and a lone "\r" become "\n".
void unify_line_ends(std::string& text)
{
    std::size_t to = 0;
    for (std::size_t from = 0; from < text.size(); ++from) {
        const bool carriage_return = text[from] == '\r';
        text[to++] = carriage_return ? '\n' : text[from];
        if (carriage_return && from + 1 < text.size() && text[from + 1] == '\n')
            ++from;
    }
    text.resize(to);
}

bool is_white(char32_t letter)
{
    return letter == '\t' || letter == '\n' || letter == 0x85 ||
           utf8proc_category(static_cast<utf8proc_int32_t>(letter)) == UTF8PROC_CATEGORY_ZS || letter == 0x2028 ||
           letter == 0x2029;
}

/// Signs that nobody sees and that mean nothing in a cell: soft hyphen, zero width space, word joiner, a lost byte
/// order mark.
bool is_without_width(char32_t letter)
{
    return letter == 0xAD || letter == 0x200B || letter == 0x2060 || letter == 0xFEFF;
}

/// Control characters, signs that turn the direction of writing, private and unassigned ones.
bool is_refused(char32_t letter)
{
    if (letter == replacement)
        return true;
    const auto category = utf8proc_category(static_cast<utf8proc_int32_t>(letter));
    if (category == UTF8PROC_CATEGORY_CF)
        return letter != 0x200C && letter != 0x200D; // these two join letters in some scripts
    return category == UTF8PROC_CATEGORY_CC || category == UTF8PROC_CATEGORY_CN || category == UTF8PROC_CATEGORY_CO ||
           category == UTF8PROC_CATEGORY_CS;
}

/// Letters with their marks as one sign each: fonts here draw separate marks beside their letters.
std::string composed(const std::string& text)
{
    const std::unique_ptr<utf8proc_uint8_t, decltype(&std::free)> joined(
        utf8proc_NFC(reinterpret_cast<const utf8proc_uint8_t*>(text.c_str())), &std::free);
    return joined ? reinterpret_cast<const char*>(joined.get()) : text;
}

/// Whether a text needs no work: letters of ASCII, single blanks between them. So are nearly all texts of a release.
bool is_tidy_ascii(std::string_view text)
{
    unsigned char before = ' ';
    for (const char c : text) {
        const auto letter = static_cast<unsigned char>(c);
        if (letter < 0x20 || letter > 0x7E || (letter == ' ' && before == ' '))
            return false;
        before = letter;
    }
    return text.empty() || before != ' ';
}

/// The work of tidy and shown; `refused` tells whether a sign was replaced.
std::string tidy_text(std::string_view cell, bool& refused)
{
    if (is_tidy_ascii(cell))
        return std::string(cell);
    std::string text;
    bool ascii = true;
    bool blank_due = false;
    while (!cell.empty()) {
        char32_t letter = take_letter(cell);
        if (is_white(letter)) {
            blank_due = !text.empty();
            continue;
        }
        if (is_without_width(letter))
            continue;
        if (is_refused(letter)) {
            refused = true;
            letter = replacement;
        }
        if (blank_due)
            text += ' ';
        blank_due = false;
        ascii = ascii && letter < 0x80;
        append(text, letter);
    }
    return ascii ? text : composed(text);
}

} // namespace

std::string to_utf8(std::string_view bytes)
{
    auto text = decoded(bytes);
    unify_line_ends(text);
    return text;
}

std::optional<std::string> tidy(std::string_view cell)
{
    bool refused = false;
    auto text = tidy_text(cell, refused);
    if (refused)
        return std::nullopt;
    return text;
}

std::string shown(std::string_view cell)
{
    bool refused = false;
    return tidy_text(cell, refused);
}

std::size_t letters_in(std::string_view utf8)
{
    std::size_t letters = 0;
    for (const char c : utf8)
        letters += (byte(c) & 0xC0U) != 0x80U ? 1U : 0U;
    return letters;
}

} // namespace catalog
