#include "core/label/folded_words.h"

#include <array>
#include <cstdint>
#include <utility>

namespace core {
namespace {

/// What becomes of one character of a text.
struct Folded {
    std::string_view letters; ///< what it adds to its word
    std::size_t size;         ///< its bytes
    bool breaks;              ///< it ends a word
};

constexpr std::string_view break_here{};

// U+00C0 to U+00FF without their marks; the two signs among them end a word.
constexpr std::array<std::string_view, 64> latin_1{
    "a", "a", "a", "a", "a", "a", "ae", "c", "e",  "e",  "e", "e", "i", "i", "i", "i", "d",  "n", "o",  "o", "o", "o",
    "o", "",  "o", "u", "u", "u", "u",  "y", "th", "ss", "a", "a", "a", "a", "a", "a", "ae", "c", "e",  "e", "e", "e",
    "i", "i", "i", "i", "d", "n", "o",  "o", "o",  "o",  "o", "",  "o", "u", "u", "u", "u",  "y", "th", "y"};

bool is_continuation(std::string_view text, std::size_t at)
{
    return at < text.size() && (static_cast<unsigned char>(text[at]) & 0xC0U) == 0x80U;
}

Folded ascii(char c, std::string_view text, std::size_t at)
{
    static constexpr std::string_view small = "abcdefghijklmnopqrstuvwxyz";
    if (c >= 'A' && c <= 'Z')
        return {small.substr(static_cast<std::size_t>(c - 'A'), 1), 1, false};
    if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '%')
        return {text.substr(at, 1), 1, false};
    return {break_here, 1, c != '\''};
}

/// Characters of two bytes: Latin letters with marks, marks of their own, signs.
Folded two_bytes(std::string_view text, std::size_t at)
{
    const auto first = static_cast<unsigned char>(text[at]);
    const auto second = static_cast<unsigned char>(text[at + 1]);
    if (first == 0xC3) {
        const auto letters = latin_1[second & 0x3FU];
        return {letters, 2, letters.empty()};
    }
    if (first == 0xC2) // signs: a registered mark ends no word, a hard blank does
        return {break_here, 2, second != 0xAE && second != 0xAD};
    if (first == 0xC5 && (second == 0x92 || second == 0x93))
        return {"oe", 2, false};
    if (first == 0xCC || (first == 0xCD && second < 0xB0)) // marks that stand alone
        return {break_here, 2, false};
    return {text.substr(at, 2), 2, false};
}

/// Characters of three bytes: dashes, quotes and daggers end a word, letters of other scripts belong to it.
Folded three_bytes(std::string_view text, std::size_t at)
{
    const auto first = static_cast<unsigned char>(text[at]);
    const auto second = static_cast<unsigned char>(text[at + 1]);
    const auto third = static_cast<unsigned char>(text[at + 2]);
    if (first == 0xE2 && second == 0x80)
        return {break_here, 3, third != 0x98 && third != 0x99}; // but not an apostrophe
    if (first == 0xE2 && second == 0x84 && third == 0xA2)       // a trade mark
        return {break_here, 3, false};
    if (first == 0xE2 || (first == 0xE3 && second == 0x80))
        return {break_here, 3, true};
    return {text.substr(at, 3), 3, false};
}

Folded folded_at(std::string_view text, std::size_t at)
{
    const auto first = static_cast<unsigned char>(text[at]);
    if (first < 0x80)
        return ascii(text[at], text, at);
    if (first >= 0xC2 && first < 0xE0 && is_continuation(text, at + 1))
        return two_bytes(text, at);
    if (first >= 0xE0 && first < 0xF0 && is_continuation(text, at + 1) && is_continuation(text, at + 2))
        return three_bytes(text, at);
    return {text.substr(at, 1), 1, false};
}

bool ends_in(std::string_view word, std::initializer_list<std::string_view> ends)
{
    for (const auto end : ends)
        if (word.ends_with(end))
            return true;
    return false;
}

} // namespace

std::string singular(std::string word)
{
    if (word.size() <= 3 || ends_in(word, {"ss", "us", "is"}))
        return word;
    if (word.size() > 4 && word.ends_with("ies"))
        return word.replace(word.size() - 3, 3, "y");
    if (word.size() > 4 && word.ends_with("ie"))
        return word.replace(word.size() - 2, 2, "y");
    if (word.size() > 4 && ends_in(word, {"oes", "ches", "shes", "xes", "sses", "zes"}))
        return word.erase(word.size() - 2);
    if (word.ends_with('s'))
        word.pop_back();
    return word;
}

std::vector<FoldedWord> folded_words(std::string_view text)
{
    std::vector<FoldedWord> words;
    std::string letters;
    std::size_t begin = 0;
    std::size_t end = 0;
    const auto close = [&] {
        if (!letters.empty())
            words.push_back({singular(std::exchange(letters, {})), begin, end});
    };
    for (std::size_t at = 0; at < text.size();) {
        const Folded folded = folded_at(text, at);
        if (folded.breaks)
            close();
        if (text[at] == '&' || text[at] == '+')
            words.push_back({"and", at, at + 1});
        if (text[at] == '/') // so that "coconut/milk" is not "coconut milk"
            words.push_back({"or", at, at + 1});
        if (!folded.letters.empty()) {
            if (letters.empty())
                begin = at;
            letters += folded.letters;
            end = at + folded.size;
        }
        at += folded.size;
    }
    close();
    return words;
}

} // namespace core
