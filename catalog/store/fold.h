// Letters without accents and case, so that names are found however they are typed. Sources: the Unicode Standard,
// annex 15 (NFKD: letters apart from their marks) and section 5.18 (case folding).
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace catalog {

/// Longer words are cut, in bytes: no name needs more to be told from others.
inline constexpr std::size_t longest_word = 32;

/// The words of a text, one blank between two: "Crème d'Avoine, 2 %" gives "creme davoine 2". Letters and digits make
/// words, an apostrophe in a word is left out, all else stands between words. Never fails: what is no UTF-8 stands
/// between words too.
[[nodiscard]] std::string fold(std::string_view text);

/// The same into a text that is used again and again.
void fold_into(std::string_view text, std::string& folded);

/// Calls `use(word)` with every word of a folded text.
template<class Use>
void each_word(std::string_view folded, Use use)
{
    while (!folded.empty()) {
        const auto end = folded.find(' ');
        use(folded.substr(0, end));
        if (end == std::string_view::npos)
            return;
        folded.remove_prefix(end + 1);
    }
}

} // namespace catalog
