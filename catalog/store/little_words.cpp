#include "catalog/store/little_words.h"

#include "catalog/store/fold.h"

#include <algorithm>
#include <iterator>

namespace catalog {
namespace {

// Articles, prepositions and "and", of both languages, folded: names have them or not as they please. Source: common
// practice (lists of words that a search passes over). No word is among them that tells foods apart: "sin" and "no",
// "without" and "free" stay.
constexpr std::string_view little_words[] = {
    "a",  "al",  "and", "con", "de",   "del", "el",   "en", "for", "in", //
    "la", "las", "los", "of",  "para", "the", "with", "y",
};

bool is_little(std::string_view word)
{
    return std::find(std::begin(little_words), std::end(little_words), word) != std::end(little_words);
}

} // namespace

std::vector<std::string> words_to_look_for(std::string_view question, std::size_t most)
{
    std::vector<std::string> little;
    std::vector<std::string> others;
    each_word(question, [&](std::string_view word) {
        auto& words = is_little(word) ? little : others;
        if (words.size() < most && !word.empty())
            words.emplace_back(word);
    });
    return others.empty() ? little : others;
}

} // namespace catalog
