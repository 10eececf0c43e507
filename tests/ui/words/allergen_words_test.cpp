// The major allergens in words: whole sentences in both languages, each place told apart, nothing promised. Source of
// what is named: FD&C Act 201(qq) and 403(w); FASTER Act of 2021 (sesame, from 2023-01-01).
#include "tests/support/headless.h"
#include "tests/support/label_maker.h"
#include "tests/ui/samples.h"
#include "ui/words/allergen_words.h"
#include "ui/words/pair_words.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace {

using Sentences = std::vector<std::string>;

core::Product product_with(std::optional<std::string> ingredients, std::optional<std::string> contains,
                           const char* entered_on = "2026-01-19")
{
    auto product = test::demo_product("9520366004012");
    product.label.ingredients = std::move(ingredients);
    product.label.contains = std::move(contains);
    product.origin.entered_on = core::Date::parse(entered_on).value();
    return product;
}

Sentences sentences(const core::Product& product, const char* code)
{
    const auto& text = product.label.ingredients;
    return ui::allergen_sentences(product, text ? core::take_apart(*text) : core::IngredientList{},
                                  test::language(code));
}

/// Every sentence that is made of these packages, on One label and on the pair.
Sentences all_sentences(const core::Product& product, const ui::Language& language)
{
    Sentences all;
    for (const auto& sections :
         {ui::package_sections(product, language), ui::pair_package_sections(product, product, language)})
        for (const auto& section : sections) {
            all.push_back(section.heading);
            all.insert(all.end(), section.sentences.begin(), section.sentences.end());
        }
    return all;
}

const std::vector<core::Product>& cases()
{
    static const std::vector<core::Product> all{
        product_with("Wheat flour, soy lecithin, natural flavor. Contains: wheat, soy. May contain almonds.", "Wheat"),
        product_with("Rice, salt.", ""),
        product_with("Rice, salt.", "Salt"),
        product_with("Milk.", std::nullopt),
        product_with(std::nullopt, "Milk"),
        product_with(std::nullopt, std::nullopt, "2022-12-31"),
    };
    return all;
}

} // namespace

TEST_CASE("allergen words: the statement, the ingredients, doubt and notes are told apart")
{
    const auto product =
        product_with("Wheat flour, soy lecithin, whey, natural flavor. May contain almonds.", "Wheat, Milk");
    CHECK(sentences(product, "en") ==
          Sentences{"Contains statement: “Wheat, Milk”. Recognized in it: milk, wheat.",
                    "The ingredients name: milk (“whey”), wheat (“Wheat flour”), soybeans (“soy lecithin”).",
                    "Note on the label: “May contain almonds”. No law asks for such a note. Recognized in it: tree "
                    "nuts (“almonds”)."});
    CHECK(sentences(product, "es") ==
          Sentences{"Línea de “Contiene”: “Wheat, Milk”. Se reconoce ahí: leche (“Milk”), trigo (“Wheat”).",
                    "Los ingredientes nombran: leche (“whey”), trigo (“Wheat flour”), soya (“soy lecithin”).",
                    "Aviso en la etiqueta: “May contain almonds”. Ninguna ley exige un aviso así. Se reconoce ahí: "
                    "nueces de árbol (“almonds”)."});
}

TEST_CASE("allergen words: an ingredient that sometimes holds it is in doubt, not named")
{
    const auto all = sentences(product_with("Rice, vegan cream.", ""), "en");
    CHECK(std::ranges::find(all, "In doubt, sometimes made with it: milk (“vegan cream”).") != all.end());
    const auto spanish = sentences(product_with("Rice, vegan cream.", ""), "es");
    CHECK(std::ranges::find(spanish, "En duda, a veces se hace con eso: leche (“vegan cream”).") != spanish.end());
}

TEST_CASE("allergen words: no statement recorded, one entered as absent, and one in the text are three things")
{
    CHECK(sentences(product_with("Milk.", std::nullopt), "en") ==
          Sentences{"Contains statement: not recorded here.", "The ingredients name: milk (“Milk”)."});
    CHECK(sentences(product_with("Milk.", std::nullopt), "es") ==
          Sentences{"Línea de “Contiene”: no se anotó aquí.", "Los ingredientes nombran: leche (“Milk”)."});
    CHECK(sentences(product_with("Milk.", ""), "en").front() ==
          "Contains statement: on 2026-01-19 it was entered that the label has none. A label may name allergens just "
          "in its ingredients.");
    CHECK(sentences(product_with("Rice. Contains: milk.", std::nullopt), "en") ==
          Sentences{"Contains statement: not recorded here.",
                    "Contains statement in the text of the ingredients: “milk”. Recognized in it: milk.",
                    "No word of the ingredients was recognized here as a major allergen. That is no promise. Read the "
                    "list on the package."});
    CHECK(sentences(product_with("Rice.", "Salt"), "en").front() ==
          "Contains statement: “Salt”. Read it with care: no word of it was recognized here as a major allergen.");
    CHECK(sentences(product_with("Rice.", "Milk, Soy"), "en").front() ==
          "Contains statement: “Milk, Soy”. Recognized in it: milk, soybeans (“Soy”).");
}

TEST_CASE("allergen words: ingredients that are not recorded are said to be so")
{
    CHECK(sentences(product_with(std::nullopt, std::nullopt), "en") ==
          Sentences{"Contains statement: not recorded here.", "The ingredients were not entered here."});
    CHECK(sentences(product_with(std::nullopt, std::nullopt), "es") ==
          Sentences{"Línea de “Contiene”: no se anotó aquí.", "Aquí no se anotaron los ingredientes."});
}

TEST_CASE("allergen words: an entry from before 2023 says that sesame did not have to be named")
{
    const auto last = [](const char* day, const char* code) {
        return sentences(product_with("Rice.", "", day), code).back();
    };
    CHECK(last("2022-12-31", "en") == "Sesame: when this was entered, on 2022-12-31, labels did not have to name it as "
                                      "an allergen. They must since 2023-01-01.");
    CHECK(last("2022-12-31", "es") == "Sésamo: cuando se anotó esto, el 2022-12-31, las etiquetas no tenían que "
                                      "nombrarlo como alérgeno. Deben hacerlo desde el 2023-01-01.");
    CHECK(last("2023-01-01", "en").find("Sesame") == std::string::npos);
}

TEST_CASE("allergen words: the names stand in the order of the law's list, in both languages")
{
    const char* const english[] = {"milk",  "egg",      "fish",  "crustacean shellfish", "tree nuts", "peanuts",
                                   "wheat", "soybeans", "sesame"};
    const char* const spanish[] = {
        "leche", "huevo", "pescado",          "mariscos crustáceos", "nueces de árbol", "cacahuate (maní)",
        "trigo", "soya",  "sésamo (ajonjolí)"};
    for (std::size_t i = 0; i < core::allergen_count; ++i) {
        CHECK(ui::allergen_name(static_cast<core::Allergen>(i), test::language("en")) == english[i]);
        CHECK(ui::allergen_name(static_cast<core::Allergen>(i), test::language("es")) == spanish[i]);
    }
}

TEST_CASE("allergen words: every label says its date, to read the package, and whom to ask; nothing is empty")
{
    for (const auto& product : cases())
        for (const std::string code : {"en", "es"}) {
            CAPTURE(code);
            const auto& language = test::language(code);
            const auto all = all_sentences(product, language);
            const auto has = [&](const std::string& words) {
                return std::ranges::count_if(all, [&](const auto& one) { return one.find(words) != one.npos; });
            };
            CHECK(std::ranges::count(all, "") == 0);
            CHECK(has(product.origin.entered_on.text()) >= 2); // on the label, and on the pair
            CHECK(has(code == "en" ? "read the package in your hand" : "lea el paquete que tiene en la mano") == 2);
            CHECK(has(code == "en" ? "a doctor or a registered dietitian" : "a un médico o a un dietista registrado") ==
                  2);
        }
}

TEST_CASE("allergen words: no sentence in any language promises that something is not in a food")
{
    const std::string never[] = {"free of",       "-free",       "safe",        "does not contain", "do not contain",
                                 "allergen free", "libre de",    "libres de",   "sin alérg",        "sin leche",
                                 "segur",         "no contiene", "no contienen"};
    const auto check = [&never](std::string words) {
        std::ranges::transform(words, words.begin(), [](unsigned char c) { return c < 128 ? std::tolower(c) : c; });
        CAPTURE(words);
        for (const auto& promise : never) {
            CAPTURE(promise);
            CHECK(words.find(promise) == std::string::npos);
        }
    };
    for (const std::string code : {"en", "es"}) {
        const auto& language = test::language(code);
        for (std::size_t i = 0; i < ui::text_names().size(); ++i)
            check(language.text(static_cast<ui::TextId>(i)));
        for (const auto& product : cases())
            for (const auto& words : all_sentences(product, language)) {
                check(words);
                CHECK((" " + words).find(" sin ") == std::string::npos);
            }
    }
}

TEST_CASE("allergen words: a pair tells each side under its own heading, and both dates")
{
    const auto left = product_with("Whole wheat flour, honey.", std::nullopt, "2026-01-12");
    const auto right = product_with("Enriched flour, sugar.", "Wheat", "2026-02-03");
    const auto sections = ui::pair_package_sections(left, right, test::language("en"));
    REQUIRE(sections.size() == 3);
    CHECK(sections[1].heading == "Left: allergens, first grain, sugars");
    CHECK(sections[1].sentences.front() == "Contains statement: not recorded here.");
    CHECK(sections[2].heading == "Right: allergens, first grain, sugars");
    CHECK(sections[2].sentences.front() == "Contains statement: “Wheat”. Recognized in it: wheat.");
    CHECK(sections[0].sentences ==
          Sentences{"This is what the labels said on 2026-01-12 (left) and 2026-02-03 (right). Recipes change. For "
                    "allergies and diets read the package in your hand, and ask a doctor or a registered dietitian."});
    const auto comparison = core::compare(left.label, right.label, core::Basis::Serving);
    CHECK(ui::pair_words(comparison, left, right, test::language("en")).sections == sections);
}
