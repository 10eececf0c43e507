// The readability scores against published values, and the counting of sentences, words and syllables behind them.
#include "tests/support/reference_table.h"
#include "ui/words/plain.h"

#include <doctest/doctest.h>

#include <cmath>
#include <string>

namespace {

/// A score that stands in readability.csv, by the name of its formula; nothing for formulas that no screen is held to.
double score(const std::string& formula, std::size_t sentences, std::size_t words, std::size_t syllables)
{
    return formula == "flesch_kincaid_grade" ? ui::flesch_kincaid_grade(sentences, words, syllables)
                                             : ui::inflesz(sentences, words, syllables);
}

struct Word {
    std::string word;
    std::size_t syllables;
};

} // namespace

TEST_CASE("plain: the scores are those of the published examples")
{
    std::size_t checked = 0;
    for (const std::string formula : {"flesch_kincaid_grade", "szigriszt_pazos"})
        for (const auto& row : test::reference_rows("readability.csv", "formula", formula)) {
            if (row["kind"] != "example")
                continue;
            CAPTURE(row.place());
            CAPTURE(row["name"]);
            const auto found =
                score(formula, std::stoul(row["sentences"]), std::stoul(row["words"]), std::stoul(row["syllables"]));
            CHECK(found == doctest::Approx(std::stod(row["expected_score"])).epsilon(0.00001));
            // As printed in its source: to as many decimals as stand there.
            const auto& printed = row["value"];
            if (printed.empty())
                continue;
            const auto point = printed.find('.');
            const double half = 0.5 / std::pow(10.0, static_cast<double>(printed.size() - point - 1));
            CHECK(std::abs(found - std::stod(printed)) <= half + 0.001);
            ++checked;
        }
    CHECK(checked == 11); // a renamed formula would check nothing
}

TEST_CASE("plain: the coefficients are the published ones")
{
    struct Case {
        std::string formula, name;
        double found;
    };
    // One sentence or word more than the last tells one coefficient from the others.
    const auto grade = [](std::size_t s, std::size_t w, std::size_t y) { return ui::flesch_kincaid_grade(s, w, y); };
    const auto ease = [](std::size_t s, std::size_t w, std::size_t y) { return ui::inflesz(s, w, y); };
    const Case cases[] = {
        {"flesch_kincaid_grade", "constant", grade(1, 1, 1) - 0.39 - 11.8},
        {"flesch_kincaid_grade", "words_per_sentence", grade(1, 2, 2) - grade(1, 1, 1)},
        {"flesch_kincaid_grade", "syllables_per_word", grade(1, 1, 2) - grade(1, 1, 1)},
        {"szigriszt_pazos", "constant", ease(1, 1, 1) + 1 + 62.3},
        {"szigriszt_pazos", "words_per_sentence", ease(1, 2, 2) - ease(1, 1, 1)},
        {"szigriszt_pazos", "syllables_per_word", ease(1, 1, 2) - ease(1, 1, 1)},
    };
    for (const auto& c : cases)
        for (const auto& row : test::reference_rows("readability.csv", "formula", c.formula))
            if (row["kind"] == "coefficient" && row["name"] == c.name) {
                CAPTURE(row.place());
                CHECK(c.found == doctest::Approx(std::stod(row["value"])));
            }
}

TEST_CASE("plain: the band that Spanish texts must reach begins where it is published")
{
    for (const auto& row : test::reference_rows("readability.csv", "formula", "inflesz"))
        if (row["name"] == "bastante facil")
            CHECK(row["value"] == "65-80");
}

// Source: the sentences whose counts are published with their scores, in readability.csv.
TEST_CASE("plain: published sentences have the published counts")
{
    struct Case {
        std::string text;
        ui::PlainCount count;
    };
    const Case cases[] = {
        {"The cat sat on the mat.", {1, 6, 6, 6}},
        {"Cool dogs wear da sunglasses.", {1, 5, 7, 7}},
        {"The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.", {1, 13, 24, 24}},
    };
    for (const auto& c : cases) {
        CAPTURE(c.text);
        CHECK(ui::plain_count(c.text, "en") == c.count);
    }
}

// Source: The CMU Pronouncing Dictionary, the pronunciation with the fewest syllables.
TEST_CASE("plain: English words have as many syllables as the dictionary says")
{
    const Word words[] = {
        {"size", 1},      {"names", 1},       {"rounded", 2},      {"named", 1},     {"little", 2},   {"servings", 2},
        {"packages", 3},  {"package", 2},     {"ingredients", 4},  {"diet", 2},      {"equal", 2},    {"people", 2},
        {"percent", 2},   {"cholesterol", 4}, {"calories", 3},     {"every", 2},     {"label", 2},    {"twice", 1},
        {"prices", 2},    {"touch", 1},       {"touches", 2},      {"printed", 2},   {"compared", 2}, {"used", 1},
        {"saturated", 4}, {"sodium", 3},      {"carbohydrate", 4}, {"protein", 2},   {"vitamin", 3},  {"whole", 1},
        {"differ", 2},    {"amounts", 2},     {"allergens", 3},    {"dietitian", 4}, {"doctor", 2},   {"cannot", 2},
        {"mg", 1},        {"CFR", 1},         {"101.9(c)(6)", 1},  {"20%", 1},       {"the", 1},      {"be", 1},
    };
    for (const auto& w : words) {
        CAPTURE(w.word);
        CHECK(ui::english_syllables(w.word) == w.syllables);
    }
}

// Source: RAE and ASALE, Ortografía de la lengua española (2010), diphthongs, triphthongs and hiatus; the words with
// their division are those that textbooks give for each rule.
TEST_CASE("plain: Spanish words are divided by the rules of diphthong and hiatus")
{
    const Word words[] = {
        {"ruido", 2},   {"triunfo", 2},     {"comedia", 3},  {"tierra", 2},   {"piojo", 2},        {"aire", 2},
        {"María", 3},   {"búho", 2},        {"baúl", 2},     {"reúne", 3},    {"caen", 2},         {"dehesa", 3},
        {"ahumado", 3}, {"ahogo", 3},       {"Saavedra", 4}, {"Paraguay", 3}, {"anunciéis", 3},    {"cuídate", 3},
        {"buey", 1},    {"prohíben", 3},    {"cohibir", 2},  {"guerra", 2},   {"guiso", 2},        {"antigüedad", 4},
        {"cigüeña", 3}, {"lingüística", 4}, {"aldea", 3},    {"león", 2},     {"oído", 3},         {"cuota", 2},
        {"y", 1},       {"chiita", 3},      {"porción", 2},  {"azúcares", 4}, {"carbohidrato", 4}, {"Él", 1},
        {"Índice", 3},  {"etiqueta", 4},    {"ÁRBOL", 2},    {"mg", 1},       {"20%", 1},          {"yogur", 2},
    };
    for (const auto& w : words) {
        CAPTURE(w.word);
        CHECK(ui::spanish_syllables(w.word) == w.syllables);
    }
}

TEST_CASE("plain: what counts as a sentence and as a word")
{
    struct Case {
        std::string why, text, language;
        ui::PlainCount count;
    };
    const Case cases[] = {
        {"nothing", "", "en", {0, 0, 0, 0}},
        {"signs alone are no words", "... – ?", "en", {0, 0, 0, 0}},
        {"a text without a point is a sentence", "Left has less", "en", {1, 3, 3, 3}},
        {"a decimal point ends nothing", "It is 0.5 g. So look.", "en", {2, 6, 6, 6}},
        {"behind a bracket", "Look (it is so). Go.", "en", {2, 5, 5, 5}},
        {"a citation is three words", "It is so (21 CFR 101.9(c)).", "en", {1, 6, 6, 6}},
        {"an abbreviation ends nothing", "Son aprox. 9 g.", "es", {1, 4, 5, 5}},
        {"signs of arithmetic are words", "8% × 9 = 72%.", "en", {1, 5, 5, 5}},
        {"a colon ends nothing", "Left: go. Right: stop.", "en", {2, 4, 4, 4}},
        {"a hyphenated word is one", "well-known", "en", {1, 1, 2, 2}},
        {"a blank that does not break", "5\u00A0g", "en", {1, 2, 2, 2}},
        {"a question in Spanish", "¿Cuál es? Mire.", "es", {2, 3, 4, 4}},
        {"label words count two", "Cholesterol is low.", "en", {1, 3, 6, 4}},
        {"label words in Spanish", "El colesterol es bajo.", "es", {1, 4, 8, 6}},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(ui::plain_count(c.text, c.language) == c.count);
    }
}
