// The words of a printed text, folded so that letter case, accents, plurals, hyphens and apostrophes make no
// difference.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace core {

/// One word as it is looked up, and where it stands in the text that it was read from.
struct FoldedWord {
    std::string text;  ///< "anchovy" for "Anchovies"; "and" for "&" and "+", "or" for "/"
    std::size_t begin; ///< its first byte
    std::size_t end;   ///< the byte behind its last
    bool operator==(const FoldedWord&) const = default;
};

/// The words of a text in order. Latin letters lose their marks, other scripts stay as they are, and bytes that are no
/// UTF-8 stand for themselves: nothing is refused.
[[nodiscard]] std::vector<FoldedWord> folded_words(std::string_view text);

/// A word of small ASCII letters in the singular: "berries" is "berry", "cheeses" is "cheese", "bass" stays. Words that
/// are looked up are folded the same way, so it need not be good grammar, only the same for both numbers.
[[nodiscard]] std::string singular(std::string word);

} // namespace core
