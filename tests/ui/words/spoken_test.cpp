#include "tests/support/headless.h"
#include "tests/ui/samples.h"
#include "ui/words/spoken.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <regex>
#include <set>
#include <string>

namespace {

using test::language;
using ui::spoken;

struct Case {
    const char* why;
    const char* written;
    const char* english;
    const char* spanish;
};

void check(const Case& c)
{
    CAPTURE(c.why);
    CHECK(spoken(c.written, language("en")) == c.english);
    CHECK(spoken(c.written, language("es")) == c.spanish);
}

bool has_next_page(const ui::Notes& notes)
{
    return std::ranges::any_of(notes, [](const ui::Note& note) { return note.id == ui::TextId::button_page_next; });
}

} // namespace

TEST_CASE("spoken: units are said in full, one and many")
{
    const Case cases[] = {
        {"many", "8 g", "8 grams", "8 gramos"},
        {"one", "1 g", "1 gram", "un gramo"},
        {"eleven is not one", "11 g, 1.1 g", "11 grams, 1.1 grams", "11 gramos, 1.1 gramos"},
        {"a decimal stays", "0.5 mg", "0.5 milligrams", "0.5 miligramos"},
        {"without a blank", "160mg", "160 milligrams", "160 miligramos"},
        {"the small one", "2.4 mcg", "2.4 micrograms", "2.4 microgramos"},
        {"volume", "240 mL; 1 L", "240 milliliters; 1 liter", "240 mililitros; un litro"},
        {"weight and volume ounces", "12 oz, 12 fl oz", "12 ounces, 12 fluid ounces", "12 onzas, 12 onzas líquidas"},
        {"feminine", "1 oz", "1 ounce", "una onza"},
        {"pounds and kilograms", "2 lb (1 kg)", "2 pounds (1 kilogram)", "2 libras (un kilo)"},
        {"spoons", "1 tbsp, 2 tsp", "1 tablespoon, 2 teaspoons", "una cucharada, 2 cucharaditas"},
        {"an area", "75 cm²", "75 square centimeters", "75 centímetros cuadrados"},
        {"in brackets", "1 cup (39 g)", "1 cup (39 grams)", "una cup (39 gramos)"},
        {"end of a sentence", "It has 8 g.", "It has 8 grams.", "It has 8 gramos."},
        {"units without a number", "g, mg, mcg or IU", "grams, milligrams, micrograms or international units",
         "gramos, miligramos, microgramos or unidades internacionales"},
        {"a word is no unit", "2 gold, a gag, 5 Lights", "2 gold, a gag, 5 Lights", "2 gold, a gag, 5 Lights"},
        {"a letter with its number is a name", "Vitamin B12, 6 mg", "Vitamin B12, 6 milligrams",
         "Vitamin B12, 6 miligramos"},
    };
    for (const auto& c : cases)
        check(c);
}

TEST_CASE("spoken: percents")
{
    const Case cases[] = {
        {"plain", "8%", "8 percent", "8 por ciento"},
        {"with a blank", "8 %, between 5 and 20", "8 percent, between 5 and 20", "8 por ciento, between 5 and 20"},
        {"of the Daily Value", "16% DV", "16 percent Daily Value", "16 por ciento del valor diario"},
        {"the same in Spanish letters", "16 % VD", "16 percent Daily Value", "16 por ciento del valor diario"},
        {"written out", "% Daily Value: 5%", "percent Daily Value: 5 percent", "porcentaje Daily Value: 5 por ciento"},
        {"the heading", "% DV", "percent Daily Value", "porcentaje del valor diario"},
        {"in quotation marks", "“2% or less”", "\"2 percent or less\"", "\"2 por ciento or less\""},
        {"to a tenth", "20.5%", "20.5 percent", "20.5 por ciento"},
    };
    for (const auto& c : cases)
        check(c);
}

TEST_CASE("spoken: parts of a whole")
{
    const Case cases[] = {
        {"a half before a noun", "1/2 cup", "a half cup", "media cup"},
        {"one and a half", "1 1/2 cups", "1 and a half cups", "1 y media cups"},
        {"the noun decides", "1 1/2 tazas, 1/2 paquete", "1 and a half tazas, a half paquete",
         "1 y media tazas, medio paquete"},
        {"alone", "1/2", "one half", "un medio"},
        {"thirds", "2/3 cup (55 g)", "two thirds cup (55 grams)", "dos tercios de cup (55 gramos)"},
        {"thirds of, once", "2/3 de taza", "two thirds de taza", "dos tercios de taza"},
        {"quarters", "3/4 cup, 1/4 package", "three quarters cup, a quarter package",
         "tres cuartos de cup, un cuarto de package"},
        {"mixed", "1 1/4 cups", "1 and a quarter cups", "1 y un cuarto cups"},
        {"eighths", "1/8 oz", "one eighth ounce", "un octavo de onza"},
        {"half a unit", "1/2 oz, 1/2 kg", "a half ounce, a half kilogram", "media onza, medio kilo"},
        {"one and a half of a unit", "1 1/2 oz", "1 and a half ounces", "1 y media onzas"},
        {"no name", "5/12", "5 over 12", "5 sobre 12"},
        {"one sign", "½ cup, 1½ cups, 1 ⅓", "a half cup, 1 and a half cups, 1 and one third",
         "media cup, 1 y media cups, 1 y un tercio"},
    };
    for (const auto& c : cases)
        check(c);
}

TEST_CASE("spoken: numbers, money, codes and dates")
{
    const Case cases[] = {
        {"separators", "1,200 mg", "1200 milligrams", "1200 miligramos"},
        {"two of them", "1,234,567", "1234567", "1234567"},
        {"a list is no number", "3, 200", "3, 200", "3, 200"},
        {"dollars and cents", "$3.99", "3 dollars and 99 cents", "3 dólares con 99 centavos"},
        {"one of each", "$1.01", "1 dollar and 1 cent", "un dólar con un centavo"},
        {"whole dollars", "$2.00 per pound", "2 dollars per pound", "2 dólares per pound"},
        {"cents alone", "$0.05", "5 cents", "5 centavos"},
        {"many dollars", "$1,234.50", "1234 dollars and 50 cents", "1234 dólares con 50 centavos"},
        {"unit prices", "33.3 cents per ounce", "33.3 cents per ounce", "33.3 cents per ounce"},
        {"a code of 12", "520417001013", "5 2 0, 4 1 7, 0 0 1, 0 1 3", "5 2 0, 4 1 7, 0 0 1, 0 1 3"},
        {"of 13", "9520141001038.", "9 5 2, 0 1 4, 1 0 0, 1 0 3, 8.", "9 5 2, 0 1 4, 1 0 0, 1 0 3, 8."},
        {"of 14", "09520141001038", "0 9 5, 2 0 1, 4 1 0, 0 1 0, 3 8", "0 9 5, 2 0 1, 4 1 0, 0 1 0, 3 8"},
        {"a date", "2026-01-12", "2026-01-12", "2026-01-12"},
        {"a date in words", "January 12, 2026", "January 12, 2026", "January 12, 2026"},
        {"from to", "5-8, 5–8", "5 to 8, 5 to 8", "5 a 8, 5 a 8"},
        {"counted nouns", "1 porción, 1 paquete", "1 porción, 1 paquete", "una porción, un paquete"},
        {"one that counts nothing", "1 de 3", "1 de 3", "1 de 3"},
        {"a paragraph that looks like a unit", "21 CFR 101.9(g), 101.30(h)(g)", "21 CFR 101.9(g), 101.30(h)(g)",
         "21 CFR 101.9(g), 101.30(h)(g)"},
        {"a paragraph of a law", "21 CFR 101.9(c)(8)(iii)", "21 CFR 101.9(c)(8)(iii)", "21 CFR 101.9(c)(8)(iii)"},
    };
    for (const auto& c : cases)
        check(c);
}

TEST_CASE("spoken: signs, pauses, marks and short words")
{
    const Case cases[] = {
        {"less and more", "< 1 g, > 2 g", "less than 1 gram, more than 2 grams", "menos de un gramo, más de 2 gramos"},
        {"at most", "≤ 5, ≥ 6", "at most 5, at least 6", "como máximo 5, al menos 6"},
        {"arithmetic", "8% × 9 = 72%", "8 percent times 9 equals 72 percent",
         "8 por ciento por 9 es igual a 72 por ciento"},
        {"divided", "Price ÷ net", "Price divided by net", "Price entre net"},
        {"a point in the middle", "Left · Oats", "Left, Oats", "Left, Oats"},
        {"lines", "Oats\n8 g", "Oats. 8 grams", "Oats. 8 gramos"},
        {"lines that end already", "Oats:\n8 g.\n", "Oats: 8 grams.", "Oats: 8 gramos."},
        {"arrows and marks", "→ Next ✓ • ▲", "Next", "Next"},
        {"and", "Hobbin & Rye", "Hobbin and Rye", "Hobbin y Rye"},
        {"a dash", "oats — honey", "oats, honey", "oats, honey"},
        {"short words", "approx. 3; Aprox. 3", "approximately 3; Aprox. 3", "approx. 3; Aproximadamente 3"},
        {"many percents", "Sus % del Valor", "Sus percent del Valor", "Sus porcentajes del Valor"},
        {"nothing", "", "", ""},
        {"only signs", " · → ", "", ""},
        {"broken UTF-8 stays for the voice to clean", "8 g \xff", "8 grams \xff", "8 gramos \xff"},
    };
    for (const auto& c : cases)
        check(c);
}

TEST_CASE("spoken: nothing that a voice would spell out is left on any screen")
{
    // A unit's sign by itself, percent, what stands between figures or is a mark.
    const std::regex unsaid("(^|[^A-Za-z0-9'])(g|mg|mcg|kg|mL|ml|oz|lb|lbs|tbsp|tsp|DV|VD|IU)($|[^A-Za-z0-9'])"
                            "|[0-9] ?L($|[^A-Za-z])|%|[0-9]/[0-9]|[0-9],[0-9]{3}|[$<>=+\n]|·|×|÷|≤|≥|½|→|←|✓|•");
    const std::regex paragraph("[0-9)]\\([a-z]\\)"); // the "g" of 21 CFR 101.9(g) is no unit
    std::set<std::string> seen;
    for (const std::string code : {"en", "es"}) {
        test::Headless screen({1280, 800}, 100, code);
        for (auto& [name, state] : test::hard_states(language(code)))
            do {
                screen.frame(state);
                for (const auto& note : screen.notes()) {
                    const auto said = std::regex_replace(spoken(note.words, language(code)), paragraph, "");
                    if (seen.insert(code + note.words).second && std::regex_search(said, unsaid))
                        FAIL_CHECK(name, " in ", code, ": \"", note.words, "\" is said as \"", said, "\"");
                }
                ++state.page;
            } while (has_next_page(screen.notes()));
    }
    CHECK(seen.size() > 1'000);
    CHECK(std::regex_search("8 g of it", unsaid)); // it sees what it looks for
    CHECK(std::regex_search("2/3 cup", unsaid));
}
