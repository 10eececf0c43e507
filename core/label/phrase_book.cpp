#include "core/label/phrase_book.h"

#include <algorithm>

namespace core {
namespace {

std::string joined(std::span<const FoldedWord> words)
{
    std::string text;
    for (const auto& word : words)
        text += (text.empty() ? "" : " ") + word.text;
    return text;
}

} // namespace

PhraseBook::PhraseBook(std::span<const std::string_view> phrases)
{
    for (std::size_t i = 0; i < phrases.size(); ++i) {
        const auto words = folded_words(phrases[i]);
        if (words.empty())
            continue;
        entries_[joined(words)].push_back(i);
        longest_ = std::max(longest_, words.size());
    }
}

Phrase PhraseBook::longest_at(std::span<const FoldedWord> words, std::size_t first) const
{
    for (std::size_t count = std::min(longest_, words.size() - first); count > 0; --count)
        if (const auto found = entries_.find(joined(words.subspan(first, count))); found != entries_.end())
            return {first, count, found->second};
    return {first, 0, {}};
}

std::vector<Phrase> PhraseBook::all_in(std::span<const FoldedWord> words) const
{
    std::vector<Phrase> found;
    for (std::size_t at = 0; at < words.size();) {
        const Phrase phrase = longest_at(words, at);
        at += std::max<std::size_t>(phrase.count, 1);
        if (phrase.count > 0)
            found.push_back(phrase);
    }
    return found;
}

} // namespace core
