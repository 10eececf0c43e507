#include "core/label/list_heading.h"

#include "core/label/folded_words.h"

#include <algorithm>
#include <initializer_list>
#include <vector>

namespace core {
namespace {

using Kind = ListHeading::Kind;
using Words = std::vector<FoldedWord>;
using Names = std::initializer_list<std::string_view>;

bool one_of(std::string_view word, Names names)
{
    return std::ranges::find(names, word) != names.end();
}

/// Whether one of these words is among the first `count`. The words are folded: "meno" is the Spanish "menos".
bool among_first(const Words& words, std::size_t count, Names names)
{
    return std::ranges::any_of(words.begin(),
                               words.begin() + static_cast<std::ptrdiff_t>(std::min(count, words.size())),
                               [&](const FoldedWord& word) { return one_of(word.text, names); });
}

/// The heading that ends with this word, with the colon and the blanks behind it.
ListHeading ending_at(std::string_view text, std::size_t end, Kind kind)
{
    bool colon = false;
    while (end < text.size() && (text[end] == ' ' || (text[end] == ':' && !colon))) {
        colon = colon || text[end] == ':';
        ++end;
    }
    return {kind, end, colon};
}

/// A heading whose words belong to what follows.
ListHeading at_once(Kind kind, bool colon = false)
{
    return {kind, 0, colon};
}

bool begins_with_digit(std::string_view word)
{
    return word.front() >= '0' && word.front() <= '9';
}

/// "contains", "2% or less of", "less than 2 percent of each of the following": where the names begin.
std::optional<ListHeading> little(std::string_view text, const Words& words)
{
    constexpr std::size_t window = 7;
    const bool share =
        std::ranges::any_of(words.begin(), words.begin() + static_cast<std::ptrdiff_t>(std::min(window, words.size())),
                            [](const FoldedWord& word) { return word.text.ends_with('%'); }) ||
        among_first(words, window, {"percent"});
    if (!share || !among_first(words, window, {"less", "meno", "moin"}))
        return std::nullopt;
    std::size_t count = 0;
    while (count < words.size() &&
           (begins_with_digit(words[count].text) ||
            one_of(words[count].text, {"and",    "contain",    "contiene",    "each", "less", "than",    "or",   "of",
                                       "the",    "following",  "one",         "two",  "half", "percent", "%",    "by",
                                       "weight", "ingredient", "y",           "meno", "de",   "del",     "cada", "uno",
                                       "los",    "siguiente",  "ingrediente", "o",    "que",  "moin"})))
        ++count;
    if (count < 3)
        return std::nullopt;
    return ending_at(text, words[count - 1].end, Kind::Little);
}

/// "Contains", and whether it tells what is not in it.
std::optional<ListHeading> contains(std::string_view text, const Words& words)
{
    if (!one_of(words[0].text, {"contain", "contiene", "contient"}))
        return std::nullopt;
    if (words.size() > 1 && one_of(words[1].text, {"no", "not", "none", "zero"}))
        return at_once(Kind::Footnote);
    if (among_first(words, 7, {"following", "siguiente"})) // "contains one or more of the following oils:"
        return std::nullopt;
    return ending_at(text, words[0].end, Kind::Contains);
}

std::optional<ListHeading> may_contain(std::string_view text, const Words& words)
{
    if (words.size() < 2)
        return std::nullopt;
    const bool may =
        one_of(words[0].text, {"may", "puede", "peut"}) && among_first(words, 4, {"contain", "contener", "contenir"});
    const bool made = one_of(words[0].text, {"manufactured", "made", "produced", "processed", "packaged", "packed",
                                             "prepared", "elaborado", "hecho", "fabricado", "producido"}) &&
                      among_first(words, 10,
                                  {"facility", "facilty", "plant", "equipment", "line", "machinery", "bakery",
                                   "kitchen", "planta", "instalacione", "equipo", "linea"});
    if (!may && !made)
        return std::nullopt;
    return at_once(Kind::MayContain, text.find(':') < words.back().end);
}

/// "INGREDIENTS:", also without its colon. No word before it: that could be an ingredient.
std::optional<ListHeading> list(std::string_view text, const Words& words)
{
    if (!one_of(words[0].text, {"ingredient", "ingrediente"}))
        return std::nullopt;
    auto heading = ending_at(text, words[0].end, Kind::List);
    heading.spanish = words[0].text == "ingrediente";
    return heading;
}

/// "Allergens:", "ALLERGY INFORMATION:", with the "contains" that may follow.
std::optional<ListHeading> allergens(std::string_view text, const Words& words)
{
    const std::string_view first = words[0].text;
    if (!first.starts_with("allerg") && !first.starts_with("alerg"))
        return std::nullopt;
    const auto colon = text.find(':');
    const auto limit = words[std::min<std::size_t>(words.size(), 4) - 1].end;
    if (colon == std::string_view::npos || colon > limit + 1)
        return std::nullopt;
    std::size_t end = colon + 1;
    while (end < text.size() && text[end] == ' ')
        ++end;
    const Words rest = folded_words(text.substr(end));
    ListHeading heading{Kind::Contains, end, true};
    if (rest.empty())
        return heading;
    if (may_contain(text.substr(end), rest))
        heading.kind = Kind::MayContain;
    else if (const auto inner = contains(text.substr(end), rest)) {
        heading.kind = inner->kind;
        heading.size += inner->size;
    }
    return heading;
}

/// "*Organic", "\u2020 Adds no fat": a mark with words behind it.
bool is_footnote(std::string_view text, const Words& words)
{
    const bool mark = text.starts_with('*') || text.starts_with("\u2020") || text.starts_with("\u2021");
    constexpr std::size_t close = 8; // bytes: several marks and a blank
    return mark && !words.empty() && words[0].begin <= close &&
           text.substr(0, words[0].begin).find_first_of(",;.()[]") == std::string_view::npos;
}

} // namespace

std::optional<ListHeading> heading_of(std::string_view text)
{
    constexpr std::size_t enough = 120; // bytes: the longest heading is shorter
    text = text.substr(0, enough);
    const Words words = folded_words(text);
    if (is_footnote(text, words))
        return at_once(Kind::Footnote);
    if (words.empty() || words[0].begin > 0)
        return std::nullopt;
    if (const auto found = little(text, words))
        return found;
    if (const auto found = may_contain(text, words))
        return found;
    if (const auto found = allergens(text, words))
        return found;
    if (const auto found = contains(text, words))
        return found;
    return list(text, words);
}

} // namespace core
