#include "tests/support/headless.h"
#include "ui/words/beside_words.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

using N = core::Nutrient;

namespace {

std::string spoons(N nutrient, const char* printed, const char* language = "en")
{
    const auto figure = core::parse_figure(nutrient, printed).value();
    return ui::teaspoons_sentence(nutrient, figure, test::language(language)).value_or("");
}

} // namespace

TEST_CASE("beside words: sugars in teaspoons, to the quarter, and only sugars")
{
    const std::string rule = " A class counts 4 g of sugar as one teaspoon.";
    CHECK(spoons(N::AddedSugars, "12 g") == "12 g of added sugars is about 3 teaspoons." + rule);
    CHECK(spoons(N::TotalSugars, "39 g") == "39 g of total sugars is about 9 3/4 teaspoons." + rule);
    CHECK(spoons(N::TotalSugars, "4 g") == "4 g of total sugars is about 1 teaspoon." + rule);
    CHECK(spoons(N::TotalSugars, "2 g") == "2 g of total sugars is about 1/2 teaspoon." + rule);
    CHECK(spoons(N::TotalSugars, "less than 1 g") == "less than 1 g of total sugars is less than 1/4 teaspoon." + rule);
    CHECK(spoons(N::TotalSugars, "0 g").empty());
    CHECK(spoons(N::TotalCarbohydrate, "12 g").empty());
    CHECK(spoons(N::Sodium, "12 mg").empty());
    CHECK(spoons(N::AddedSugars, "12 g", "es").find("son unas 3 cucharaditas") != std::string::npos);
}

TEST_CASE("beside words: the calories of a day are a table with its edition, for nobody in particular")
{
    const auto day = ui::day_section(test::language("en"));
    const auto has = [&](const std::string& words) {
        return std::ranges::any_of(day.sentences,
                                   [&](const auto& one) { return one.find(words) != std::string::npos; });
    };
    // Dietary Guidelines for Americans, 2020-2025, Appendix 2, Table A2-2.
    CHECK(has("Ages 31 to 50: women 1,800 to 2,200, men 2,200 to 3,000."));
    CHECK(has("Ages 51 and older: women 1,600 to 2,200, men 2,000 to 2,800."));
    CHECK(has("Ages 12 to 23 months: girls 800 to 1,000, boys 800 to 1,000."));
    CHECK(has("It is not about any one person."));
    CHECK(has("registered dietitian"));
    CHECK(has("Dietary Guidelines for Americans, 2020-2025"));
    const auto spanish = ui::day_section(test::language("es"));
    CHECK(spanish.sentences.size() == day.sentences.size());
    CHECK(spanish.sentences[9] == "De 31 a 50 años: mujeres de 1,800 a 2,200, hombres de 2,200 a 3,000.");
}
