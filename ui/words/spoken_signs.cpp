#include "ui/words/spoken_signs.h"

#include <algorithm>
#include <cstddef>

namespace ui {
namespace {

struct Word {
    std::string_view sign;
    TextId id;
};
constexpr Word words_of_signs[] = {
    {"<", TextId::spoken_less_than},  {">", TextId::spoken_more_than}, {"≤", TextId::spoken_at_most},
    {"≥", TextId::spoken_at_least},   {"×", TextId::spoken_times},     {"÷", TextId::spoken_divided},
    {"=", TextId::spoken_equals},     {"+", TextId::spoken_plus},      {"−", TextId::spoken_minus},
    {"±", TextId::spoken_plus_minus}, {"&", TextId::spoken_and},
};

struct Replaced {
    std::string_view sign;
    std::string_view by;
};
constexpr Replaced replaced[] = {
    {"½", " 1/2"}, {"⅓", " 1/3"}, {"⅔", " 2/3"},   {"¼", " 1/4"},   {"¾", " 3/4"},   {"⅛", " 1/8"},
    {"⅜", " 3/8"}, {"⅝", " 5/8"}, {"⅞", " 7/8"},   {"⁄", "/"},      {"·", ", "},     {"…", ", "},
    {"\n", ". "},  {"\r", " "},   {"\t", " "},     {"“", "\""},     {"”", "\""},     {"«", "\""},
    {"»", "\""},   {"’", "'"},    {"\u00A0", " "}, {"\u202F", " "}, {"\u2011", "-"},
};

/// Arrows, technical signs, boxes and shapes, marks and hearts, more arrows: nobody says them. Unicode 15, blocks.
struct Block {
    std::string_view first;
    std::string_view last;
};
constexpr Block unsaid[] = {
    {"\u2190", "\u21FF"}, {"\u2300", "\u23FF"}, {"\u2500", "\u27BF"},         {"\u2B00", "\u2BFF"},
    {"\u2022", "\u2022"}, {"\uFE00", "\uFE0F"}, {"\U0001F000", "\U0001FAFF"},
};

/// The bytes of the character that begins the text.
std::size_t bytes_of(std::string_view text)
{
    const auto continues = [](char c) { return (static_cast<unsigned char>(c) & 0xC0) == 0x80; };
    std::size_t bytes = 1;
    while (bytes < std::min<std::size_t>(text.size(), 4) && continues(text[bytes]))
        ++bytes;
    return bytes;
}

/// UTF-8 sorts as its characters do, among those of the same length.
bool is_unsaid(std::string_view character)
{
    return std::ranges::any_of(unsaid, [&](const Block& block) {
        return character.size() == block.first.size() && character >= block.first && character <= block.last;
    });
}

bool is_digit(char c)
{
    return c >= '0' && c <= '9';
}

bool is_pause(char c)
{
    return c == ',' || c == '.' || c == ';' || c == ':' || c == '!' || c == '?';
}

} // namespace

std::string without_signs(std::string_view words, const Language& language)
{
    std::string plain;
    for (std::size_t at = 0; at < words.size();) {
        const auto character = words.substr(at, bytes_of(words.substr(at)));
        at += character.size();
        const auto* const word = std::ranges::find(words_of_signs, character, &Word::sign);
        const auto* const other = std::ranges::find(replaced, character, &Replaced::sign);
        const bool amid_figures = !plain.empty() && is_digit(plain.back()) && at < words.size() && is_digit(words[at]);
        if (word != std::end(words_of_signs))
            plain.append(" ").append(language.text(word->id)).append(" ");
        else if (character == "–" && amid_figures)
            plain.append(" ").append(language.text(TextId::spoken_to)).append(" ");
        else if (character == "–" || character == "—")
            plain += ", ";
        else if (other != std::end(replaced))
            plain += other->by;
        else if (is_unsaid(character))
            plain += ' ';
        else
            plain += character;
    }
    return plain;
}

std::string tidy(std::string_view words)
{
    std::string tidied;
    for (std::size_t at = 0; at < words.size(); ++at) {
        const char c = words[at];
        const bool ends = at + 1 == words.size() || words[at + 1] == ' ';
        if (is_pause(c) && ends) {
            while (!tidied.empty() && tidied.back() == ' ')
                tidied.pop_back();
            if (tidied.empty() || is_pause(tidied.back()))
                continue;
        }
        if (c != ' ' || (!tidied.empty() && tidied.back() != ' '))
            tidied += c;
    }
    while (!tidied.empty() && tidied.back() == ' ')
        tidied.pop_back();
    return tidied;
}

} // namespace ui
