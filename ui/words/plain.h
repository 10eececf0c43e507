// How plain a text is: counts sentences, words and syllables, and works out the published readability scores.
#pragma once

#include <cstddef>
#include <string_view>

namespace ui {

/// What a text is made of. A word is what stands between blanks, as long as it has a letter, a digit or a sign such as
/// "=". Whatever holds a digit ("8%", "101.9(c)"), signs, units ("mg") and words in capitals ("CFR") are words of one
/// syllable each (Flesch, How to Write Plain English, 1979, chapter 2: "Count abbreviations, figures, symbols and their
/// combinations as one-syllable words"). A hyphenated word is one word. A sentence ends with . ? ! or ..., and with the
/// text; Flesch's rule also ends one at colons and semicolons, which is not done here, so scores come out stricter.
struct PlainCount {
    std::size_t sentences = 0;
    std::size_t words = 0;
    std::size_t syllables = 0;
    std::size_t label_syllables = 0; ///< the same, with two for each word that the Nutrition Facts label itself prints
    bool operator==(const PlainCount&) const = default;
};

/// Counts a text in English ("en") or Spanish ("es").
[[nodiscard]] PlainCount plain_count(std::string_view text, std::string_view language_code);

/// Syllables of an English word, by rules of spelling and a table of words that the rules get wrong; at least 1.
[[nodiscard]] std::size_t english_syllables(std::string_view word);

/// Syllables of a Spanish word: two open vowels are apart, a closed one joins its neighbour unless it has an accent,
/// and an h between vowels changes nothing; at least 1. Source: RAE and ASALE, Ortografía de la lengua española (2010),
/// the chapter on diphthongs, triphthongs and hiatus.
[[nodiscard]] std::size_t spanish_syllables(std::string_view word);

/// Whether a word of three syllables or more is one that the Nutrition Facts label prints (21 CFR 101.9(c), (d); for
/// Spanish the same words of the bilingual format, 21 CFR 101.9(d)(14)).
[[nodiscard]] bool is_label_word(std::string_view word, std::string_view language_code);

/// The US school grade of a text. Source: Kincaid et al. (1975), Navy Research Branch Report 8-75. Counts are above 0.
[[nodiscard]] double flesch_kincaid_grade(std::size_t sentences, std::size_t words, std::size_t syllables);

/// How easy a Spanish text is: 65 begins "bastante fácil". Source: Szigriszt Pazos (1993) for the score,
/// Barrio-Cantalejo et al. (2008), An Sist Sanit Navar 31(2), for the INFLESZ bands. Counts are above 0.
[[nodiscard]] double inflesz(std::size_t sentences, std::size_t words, std::size_t syllables);

} // namespace ui
