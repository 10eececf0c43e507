// The names that the label itself prints, in English and in the Spanish of its bilingual display.
#include "tests/support/headless.h"
#include "tests/support/reference_table.h"

#include <doctest/doctest.h>

#include <string>

namespace {

/// Small letters, also of those with an accent that Spanish has: the label prints "Grasa Total", a screen "Grasa
/// total".
std::string small(std::string words)
{
    for (std::size_t i = 0; i < words.size(); ++i) {
        const auto byte = static_cast<unsigned char>(words[i]);
        const bool ascii = byte >= 'A' && byte <= 'Z';
        const bool latin = i > 0 && static_cast<unsigned char>(words[i - 1]) == 0xC3 && byte >= 0x80 && byte <= 0x9E;
        if (ascii || latin)
            words[i] = static_cast<char>(byte + 0x20);
    }
    return words;
}

} // namespace

TEST_CASE("label names: nutrients, servings and Daily Value are called as the label calls them in both languages")
{
    for (const auto& row : test::reference_rows("label_names.csv")) {
        CAPTURE(row.place());
        const auto id = ui::text_by_name(row["text"]);
        REQUIRE(id.has_value());
        const auto& spanish = row["ours"].empty() ? row["spanish"] : row["ours"];
        CHECK(small(test::language("en").text(*id)) == small(row["english"]));
        CHECK(small(test::language("es").text(*id)) == small(spanish));
    }
}
