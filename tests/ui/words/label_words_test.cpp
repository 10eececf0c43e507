// One label in words: the taught order, and whole sentences in both languages.
#include "tests/support/headless.h"
#include "tests/ui/samples.h"
#include "ui/words/label_words.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <stdexcept>
#include <string>
#include <vector>

namespace {

using Kind = ui::LabelPiece::Kind;
using Sentences = std::vector<std::string>;

ui::LabelWords words(const char* code, const std::string& language)
{
    return ui::label_words(test::demo_product(code), test::language(language));
}

/// "Sodium: 190 mg; 8%, between 5 and 20": one line a piece.
std::string line(const ui::LabelPiece& piece)
{
    switch (piece.kind) {
    case Kind::Heading:
        return "# " + piece.name;
    case Kind::Sentence:
        return piece.name;
    case Kind::Lead:
    case Kind::Figure:
        break;
    }
    return piece.name + ": " + piece.amount + (piece.reading.empty() ? "" : "; " + piece.reading);
}

Sentences lines(const ui::LabelWords& label)
{
    Sentences all;
    for (const auto& piece : label.pieces)
        all.push_back(line(piece));
    return all;
}

bool says(const ui::LabelWords& label, const std::string& sentence)
{
    const auto all = lines(label);
    return std::ranges::find(all, sentence) != all.end();
}

constexpr auto chips = "9520366004012";
constexpr auto older = "9520588008041";
constexpr auto flakes = "9520141001069";
constexpr auto toddler = "9520427005095";
constexpr auto puffed = "520417001013";

} // namespace

// The order is the one in which the panel is taught: servings, serving size, calories, less of, more of (FDA, The
// Nutrition Facts Label, "How to Understand and Use").
TEST_CASE("label words: a whole label, in the taught order")
{
    CHECK(words(chips, "en").name == "Tortilla chips, yellow corn");
    CHECK(words(chips, "en").brand == "Saltwhistle");
    CHECK(
        lines(words(chips, "en")) ==
        Sentences{
            "Servings per container: 9",
            "Serving size: 1 oz (28 g)",
            "In the package: 9 oz (255 g)",
            "If you eat the whole package, you eat 9 servings. Each figure below counts 9 times.",
            "Calories: 130",
            "% Daily Value: 5% or less is low, 20% or more is high. It counts one serving in a day of 2,000 calories.",
            "Touch a line: where it comes from",
            "# Less of",
            "Total fat: 7 g; 9%, between 5 and 20",
            "Saturated fat: 1 g; 5%, low (5 or less)",
            "Trans fat: 0 g",
            "Cholesterol: 0 mg; 0%, low (5 or less)",
            "Sodium: 55 mg; 2%, low (5 or less)",
            "Added sugars: 0 g; 0%, low (5 or less)",
            "# More of",
            "Dietary fiber: 2 g; 7%, between 5 and 20",
            "Vitamin D: 0 mcg; 0%, low (5 or less)",
            "Calcium: 32 mg; 2%, low (5 or less)",
            "Iron: 0.4 mg; 2%, low (5 or less)",
            "Potassium: 0 mg; 0%, low (5 or less)",
            "# Also on the label",
            "Total carbohydrate: 16 g; 6%, between 5 and 20",
            "Total sugars: 0 g",
            "Protein: 2 g",
            "# Ingredients",
            "Whole yellow corn, sunflower oil, sea salt, calcium hydroxide.",
            "Ingredients stand in order of weight, the heaviest first. Those after “2% or less” may stand in any "
            "order.",
            "# First grain",
            "First grain: “Whole yellow corn” is a whole grain (USDA child nutrition and CACFP guidance on whole "
            "grain-rich foods).",
            "# Sugars by their names",
            "Names of sugars: the list has none that is known here. It may hold the sugars of fruit and milk all the "
            "same.",
            "# Major allergens that the label names",
            "This is what the label said on 2026-01-19. Recipes change. For allergies and diets read the package in "
            "your hand, and ask a doctor or a registered dietitian.",
            "Contains statement: on 2026-01-19 it was entered that the label has none. A label may name allergens just "
            "in its ingredients.",
            "No word of the ingredients was recognized here as a major allergen. That is no promise. Read the list on "
            "the package.",
            "A small figure times nine servings.",
            "Entered on 2026-01-19 from cedar_hollow.csv, row 35.",
        });
}

TEST_CASE("label words: the same in Spanish, with the label's own words as they were printed")
{
    const auto spanish = words(chips, "es");
    for (const std::string sentence :
         {"Porciones por envase: 9", "Tamaño de la porción: 1 oz (28 g)",
          "Si come todo el paquete, come 9 porciones. Cada cifra de abajo cuenta 9 veces.",
          "% del Valor Diario: 5% o menos es bajo, 20% o más es alto. Cuenta una porción en un día de 2,000 calorías.",
          "Toque una línea: de dónde sale", "# Menos de", "Grasa total: 7 g; 9%, entre 5 y 20",
          "Sodio: 55 mg; 2%, bajo (5 o menos)", "Whole yellow corn, sunflower oil, sea salt, calcium hydroxide.",
          "Línea de “Contiene”: el 2026-01-19 se anotó que la etiqueta no la tiene. Una etiqueta puede nombrar sus "
          "alérgenos solo en los ingredientes.",
          "Esto decía la etiqueta el 2026-01-19. Las recetas cambian. Si tiene alergias o una dieta, lea el paquete "
          "que tiene en la mano y pregunte a un médico o a un dietista registrado.",
          "Anotado el 2026-01-19, de la hoja cedar_hollow.csv, fila 35."}) {
        CAPTURE(sentence);
        CHECK(says(spanish, sentence));
    }
    CHECK(spanish.pieces.size() == words(chips, "en").pieces.size());
}

TEST_CASE("label words: what is unusual about a label is said in a sentence")
{
    struct Case {
        const char* product;
        std::string english;
        std::string spanish;
    };
    const Case cases[] = {
        {older,
         "This is a label from before the rule of 2016. Its % Daily Values count from other amounts than those of "
         "newer "
         "labels.",
         "Esta etiqueta es anterior a la regla de 2016. Sus % del Valor Diario se cuentan con otras cantidades que los "
         "de las etiquetas nuevas."},
        {older, "Servings per container: 2.5", "Porciones por envase: 2.5"},
        {flakes, "# As prepared (see the package)", "# Ya preparado (vea el paquete)"},
        {flakes, "Servings per container: about 13", "Porciones por envase: aprox. 13"},
        {toddler, "This label is for children 1 to 3 years old, and so are its Daily Values.",
         "Esta etiqueta es para niños de 1 a 3 años, y sus Valores Diarios también."},
        {toddler, "% Daily Value: 5% or less is low, 20% or more is high. It counts one serving.",
         "% del Valor Diario: 5% o menos es bajo, 20% o más es alto. Cuenta una porción."},
        {toddler, "Servings per container: 1 (the package is one serving)",
         "Porciones por envase: 1 (el paquete es una porción)"},
        {puffed,
         "The label says: not a significant source of saturated fat, trans fat, cholesterol, dietary fiber, total "
         "sugars, added sugars, vitamin D, calcium, iron, potassium.",
         "La etiqueta dice: no es una fuente significativa de grasa saturada, grasa trans, colesterol, fibra "
         "dietética, "
         "azúcares totales, azúcares añadidos, vitamina D, calcio, hierro, potasio."},
        {"520417002072", "Servings per container: varied", "Porciones por envase: variadas"},
        {"9520366004036", "# Whole package, as the label prints it", "# Todo el paquete, como lo imprime la etiqueta"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.english);
        CHECK(says(words(c.product, "en"), c.english));
        CHECK(says(words(c.product, "es"), c.spanish));
    }
}

TEST_CASE("label words: figures of the second column stand behind its heading and nowhere else")
{
    const auto all = lines(words(flakes, "en"));
    const auto heading = std::ranges::find(all, "# As prepared (see the package)");
    REQUIRE(heading != all.end());
    const Sentences behind(heading, all.end());
    const Sentences before(all.begin(), heading);
    CHECK(std::ranges::find(before, "Sodium: 210 mg; 9%, between 5 and 20") != before.end());
    CHECK(std::ranges::find(behind, "Sodium: 290 mg; 13%, between 5 and 20") != behind.end());
    CHECK(std::ranges::find(before, "Sodium: 290 mg; 13%, between 5 and 20") == before.end());
    CHECK(std::ranges::find(behind, "Cholesterol: less than 5 mg; 1%, low (5 or less)") != behind.end());
    CHECK(std::ranges::find(behind, "Calories: 200") != behind.end());
}

TEST_CASE("label words: nobody is told to multiply the package's own figures")
{
    const char* const crackers = "9520366004036"; // 2.5 servings, and a column per container
    struct Case {
        const char* code;
        const char* sentence;
        const char* times;
    };
    const Case cases[] = {
        {"en",
         "If you eat the whole package, you eat 2.5 servings. Its figures stand further down, under “Whole package, as "
         "the "
         "label prints it”.",
         "Each figure below counts"},
        {"es",
         "Si come todo el paquete, come 2.5 porciones. Sus cifras están más abajo, en “Todo el paquete, como lo "
         "imprime la etiqueta”.",
         "Cada cifra de abajo cuenta"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.code);
        const auto counts = [&c](const char* code) {
            return std::ranges::any_of(lines(words(code, c.code)),
                                       [&c](const std::string& line) { return line.find(c.times) != line.npos; });
        };
        CHECK(says(words(crackers, c.code), c.sentence));
        CHECK_FALSE(counts(crackers));
        CHECK(counts(flakes)); // a column as prepared is per serving, too
    }
}

TEST_CASE("label words: where nothing is recorded, that is said, and no section stands empty")
{
    auto product = test::demo_product(flakes);
    product.label.contains.reset();
    product.label.ingredients.reset();
    for (const std::string code : {"en", "es"}) {
        CAPTURE(code);
        const auto& language = test::language(code);
        const auto label = ui::label_words(product, language);
        CHECK(says(label, language.text(ui::TextId::contains_not_recorded)));
        const auto all = lines(label);
        CHECK(std::ranges::count(all, language.text(ui::TextId::ingredients_not_recorded)) == 2);
        CHECK_FALSE(says(label, "# " + language.text(ui::TextId::grain_heading)));
        for (std::size_t i = 0; i < label.pieces.size(); ++i) {
            CHECK_FALSE(label.pieces[i].name.empty());
            if (label.pieces[i].kind == Kind::Heading) {
                REQUIRE(i + 1 < label.pieces.size());
                CHECK(label.pieces[i + 1].kind != Kind::Heading);
            }
        }
    }
}

// 21 CFR 101.9(c)(2)(ii): below 0.5 g is printed as 0; 101.4(b)(14): the oil has this name in the list.
TEST_CASE("label words: beside a printed 0 g of trans fat stands the oil that the ingredients name")
{
    auto product = test::demo_product(flakes);
    product.label.ingredients = "Wheat, vegetable oil shortening (partially hydrogenated soybean oil), salt.";
    const auto behind_trans_fat = [&product](const char* code) {
        const auto label = ui::label_words(product, test::language(code));
        const auto at =
            std::ranges::find(label.pieces, std::optional(core::Nutrient::TransFat), &ui::LabelPiece::nutrient);
        REQUIRE(at != label.pieces.end());
        return line(*(at + 1));
    };
    CHECK(behind_trans_fat("en") == "0 g can be up to 0.5 g a serving. The ingredients name partially hydrogenated "
                                    "oil: “partially hydrogenated soybean oil”. Classes teach to aim for 0.");
    CHECK(behind_trans_fat("es") ==
          "0 g puede ser hasta 0.5 g por porción. Los ingredientes nombran aceite parcialmente hidrogenado: “partially "
          "hydrogenated soybean oil”. En las clases se enseña a buscar 0.");
    product.label.per_serving.lines[core::Nutrient::TransFat].amount =
        core::parse_figure(core::Nutrient::TransFat, "0.5").value();
    CHECK(behind_trans_fat("en").find("0.5 g a serving") == std::string::npos);
}

TEST_CASE("label words: every label of the demo catalog carries its caution with its date")
{
    for (const auto& product : test::demo_products())
        for (const std::string code : {"en", "es"}) {
            CAPTURE(product.name);
            const auto& language = test::language(code);
            const auto label = ui::label_words(product, language);
            CHECK(says(label, language.fill(ui::TextId::label_caution, {{"date", product.origin.entered_on.text()}})));
            for (const auto& piece : label.pieces)
                CHECK(line(piece).find('{') == std::string::npos);
        }
}
