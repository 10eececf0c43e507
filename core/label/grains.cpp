#include "core/label/grains.h"

#include "core/label/folded_words.h"
#include "core/label/phrase_book.h"

#include <algorithm>
#include <optional>
#include <vector>

namespace core {
namespace {

using Means = GrainRow::Means;
using Words = std::vector<FoldedWord>;

constexpr std::string_view pattern_source = "USDA child nutrition and CACFP guidance on whole grain-rich foods";

/// The grain of one ingredient.
struct Hit {
    Means means;
    std::size_t first; ///< the words that say so
    std::size_t count;
    std::string_view source;
};

const PhraseBook& book()
{
    static const PhraseBook known = [] {
        std::vector<std::string_view> phrases;
        for (const auto& row : grain_rows())
            phrases.push_back(row.words);
        return PhraseBook(phrases);
    }();
    return known;
}

const PhraseBook& names()
{
    static const PhraseBook known(grain_names());
    return known;
}

bool is_one_of(std::string_view word, std::initializer_list<std::string_view> words)
{
    return std::ranges::find(words, word) != words.end();
}

/// Words that may stand between "whole" and the grain's name: "whole hard red winter wheat".
bool only_describes(std::string_view word)
{
    return is_one_of(word, {"yellow",  "white",       "blue",    "red",     "hard",   "soft",    "winter",  "spring",
                            "organic", "rolled",      "ground",  "stone",   "milled", "cracked", "toasted", "sprouted",
                            "steel",   "cut",         "crushed", "puffed",  "popped", "flaked",  "brown",   "black",
                            "purple",  "stoneground", "of",      "roasted", "cooked", "dried",   "malted",  "hulled"});
}

/// What follows a grain's name and makes something else of it: "corn syrup", "rice bran oil".
bool makes_another_thing(std::string_view word)
{
    return is_one_of(word, {"syrup",   "oil",    "starch",  "vinegar",      "fiber",   "fibre", "sweetener",
                            "protein", "gluten", "dextrin", "maltodextrin", "extract", "wine",  "sugar",
                            "grass",   "milk",   "drink",   "beverage",     "silk",    "color", "dextrose",
                            "malt",    "vodka",  "jarabe",  "almidon"});
}

/// What belongs to a grain's name behind it.
bool is_form(std::string_view word)
{
    return is_one_of(word, {"flour", "flake", "meal", "kernel", "berry", "groat", "grit", "grain", "crumb"});
}

/// "whole (name of a grain)", "whole grain (name)", "(name) berries", "(name) groats": none unless one begins here.
std::optional<Hit> pattern_at(const Words& words, std::size_t first)
{
    std::size_t at = first;
    const bool whole = is_one_of(words[at].text, {"whole", "entire", "wholegrain"});
    if (whole && ++at < words.size() && words[at].text == "grain" && words[first].text == "whole")
        ++at;
    constexpr std::size_t most = 5; // words between; a bound for texts without commas
    for (std::size_t skipped = 0; whole && skipped < most && at < words.size() && only_describes(words[at].text);
         ++skipped)
        ++at;
    if (at >= words.size())
        return std::nullopt;
    const Phrase name = names().longest_at(words, at);
    if (name.count == 0)
        return std::nullopt;
    std::size_t end = at + name.count;
    const bool kernels = end < words.size() && is_one_of(words[end].text, {"berry", "groat"});
    if (!whole && !kernels)
        return std::nullopt;
    while (end < words.size() && is_form(words[end].text))
        ++end;
    return Hit{Means::Whole, first, end - first, pattern_source};
}

Hit hit_at(const Words& words, std::size_t at)
{
    const Phrase phrase = book().longest_at(words, at);
    Hit hit{Means::NoGrain, at, phrase.count, {}};
    if (phrase.count > 0) {
        const auto& row = grain_rows()[phrase.rows.front()];
        hit = {row.means, at, phrase.count, row.source};
    }
    if (const auto pattern = pattern_at(words, at); pattern && pattern->count > hit.count)
        hit = *pattern;
    const auto end = hit.first + hit.count;
    if (hit.count > 0 && end < words.size() && makes_another_thing(words[end].text))
        hit.means = Means::NoGrain;
    return hit;
}

/// The first grain among the words of one ingredient.
std::optional<Hit> grain_of(const Words& words)
{
    std::optional<Hit> milling;
    for (std::size_t at = 0; at < words.size();) {
        const Hit hit = hit_at(words, at);
        at += std::max<std::size_t>(hit.count, 1);
        if (hit.count == 0 || hit.means == Means::NoGrain)
            continue;
        if (hit.means != Means::Milling)
            return hit;
        milling = milling ? milling : hit;
    }
    return milling;
}

FirstGrain::Kind kind_of(Means means)
{
    switch (means) {
    case Means::Whole:
        return FirstGrain::Kind::Whole;
    case Means::NotWhole:
    case Means::BareName:
    case Means::Milling:
        return FirstGrain::Kind::NotWhole;
    case Means::Program:
        return FirstGrain::Kind::CountsInPrograms;
    case Means::Unclear:
        return FirstGrain::Kind::Unclear;
    case Means::NoGrain:
        break;
    }
    return FirstGrain::Kind::NoneNamed;
}

FirstGrain told(const Ingredient& ingredient, const Words& words, const Hit& hit)
{
    const auto begin = words[hit.first].begin;
    const auto end = words[hit.first + hit.count - 1].end;
    return {kind_of(hit.means), ingredient.printed.substr(begin, end - begin), ingredient.printed, hit.source};
}

bool says_whole(const Words& words)
{
    const bool grain = words.size() == 2 && words[0].text == "whole" && words[1].text == "grain";
    return grain || (words.size() == 1 && is_one_of(words[0].text, {"whole", "wholegrain"}));
}

/// What the brackets behind a name that leaves it open say: "flour (whole wheat)", "oats (whole grain)".
std::optional<FirstGrain> told_in_brackets(const IngredientList& list, std::size_t owner, const FirstGrain& by_name)
{
    for (std::size_t i = owner + 1; i < list.all.size() && list.all[i].depth > list.all[owner].depth; ++i) {
        const Words words = folded_words(list.all[i].printed);
        if (says_whole(words))
            return FirstGrain{FirstGrain::Kind::Whole, list.all[i].printed, by_name.ingredient, pattern_source};
        if (const auto hit = grain_of(words))
            return told(list.all[i], words, *hit);
    }
    return std::nullopt;
}

} // namespace

FirstGrain first_grain(const IngredientList& list)
{
    for (std::size_t i = 0; i < list.all.size(); ++i) {
        if (list.all[i].list > 0)
            continue;
        const Words words = folded_words(list.all[i].printed);
        const auto hit = grain_of(words);
        if (!hit)
            continue;
        const auto grain = told(list.all[i], words, *hit);
        if (hit->means == Means::BareName || hit->means == Means::Unclear)
            if (const auto inside = told_in_brackets(list, i, grain))
                return *inside;
        return grain;
    }
    return {};
}

} // namespace core
