// Phrases of whole words, looked up in a text: the longest that begins at a word.
#pragma once

#include "core/label/folded_words.h"

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace core {

/// A phrase that was found.
struct Phrase {
    std::size_t first;                 ///< its first word
    std::size_t count;                 ///< how many words
    std::span<const std::size_t> rows; ///< the entries of the book that say so, in the book's order; never empty
};

/// A book of phrases; the same phrase may stand in it more than once. Folded as the text is: see folded_words.
class PhraseBook {
public:
    /// Entry i of the book is the i-th phrase. Empty phrases are never found.
    explicit PhraseBook(std::span<const std::string_view> phrases);

    /// The longest phrase that begins at this word; count 0 where there is none.
    [[nodiscard]] Phrase longest_at(std::span<const FoldedWord> words, std::size_t first) const;

    /// All phrases from left to right, the longest at each place, none over another.
    [[nodiscard]] std::vector<Phrase> all_in(std::span<const FoldedWord> words) const;

private:
    std::unordered_map<std::string, std::vector<std::size_t>> entries_;
    std::size_t longest_ = 0; ///< words of the longest phrase
};

} // namespace core
