// How many slips of the finger are between a typed word and others: a letter too many, too few, wrong, or two swapped.
// Source: V. I. Levenshtein, Binary codes capable of correcting deletions, insertions and reversals, 1966; swapped
// neighbours after F. J. Damerau, A technique for computer detection and correction of spelling errors, 1964.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace catalog {

/// How many slips are forgiven in a word: none below 4 letters, one from 4 on, two from 8 on.
[[nodiscard]] unsigned slips_forgiven(std::string_view word);

/// Looks at one word after the other; quick when they come in order, because it goes on where they part.
class NearWords {
public:
    /// With `beginning`, words count that only begin like the typed one.
    NearWords(std::string_view typed, unsigned most, bool beginning);

    /// How many slips this word is away; nothing when it is more than `most`.
    [[nodiscard]] std::optional<unsigned> look(std::string_view word);

    /// After how many bytes of the word that was looked at last nothing can be near any more: no word that begins with
    /// them needs to be looked at, when that one was too far. 0 where it can.
    [[nodiscard]] std::size_t hopeless_after() const { return hopeless_; }

private:
    [[nodiscard]] unsigned* row(std::size_t depth) { return &rows_[depth * (typed_.size() + 1)]; }
    [[nodiscard]] unsigned fill(std::size_t depth, std::string_view word);
    [[nodiscard]] std::optional<unsigned> within(unsigned slips) const;

    std::string typed_;
    unsigned most_;
    bool beginning_;
    std::string before_;          // the word that was looked at last
    std::size_t filled_ = 0;      // how many of its letters have their row
    std::size_t hopeless_ = 0;    // see `hopeless_after`
    std::vector<unsigned> rows_;  // slips between the first letters of both
    std::vector<unsigned> least_; // of each row its least number
    std::vector<unsigned> best_;  // the fewest slips of a beginning so far
};

} // namespace catalog
