#include "core/label/phrase_book.h"

#include <doctest/doctest.h>

#include <array>
#include <string>
#include <string_view>

namespace {

constexpr std::array<std::string_view, 6> phrases{"milk", "coconut milk", "peanut butter", "butter", "milk", ""};

} // namespace

TEST_CASE("phrase book: whole words, the longest phrase, from left to right")
{
    const core::PhraseBook book(phrases);
    struct Case {
        std::string text;
        std::string found; ///< each phrase as first+count
    };
    const Case cases[] = {
        {"milk", "0+1 "},
        {"Coconut Milk powder", "0+2 "},
        {"coconut, butter", "1+1 "}, // a book knows words, not commas: texts are taken apart first
        {"buttermilk butternut milky", ""},
        {"peanut butter and butter", "0+2 3+1 "},
        {"MILK COCONUT-MILK", "0+1 1+2 "},
        {"", ""},
    };
    for (const auto& c : cases) {
        CAPTURE(c.text);
        std::string found;
        for (const auto& phrase : book.all_in(core::folded_words(c.text)))
            found += std::to_string(phrase.first) + "+" + std::to_string(phrase.count) + " ";
        CHECK(found == c.found);
    }
}

TEST_CASE("phrase book: a phrase that stands in it twice is found with both entries")
{
    const core::PhraseBook book(phrases);
    const auto words = core::folded_words("milk");
    const auto found = book.longest_at(words, 0);
    REQUIRE(found.rows.size() == 2);
    CHECK(found.rows[0] == 0);
    CHECK(found.rows[1] == 4);
    CHECK(core::PhraseBook({}).longest_at(words, 0).count == 0);
}
