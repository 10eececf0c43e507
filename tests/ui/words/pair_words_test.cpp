// Whole sentences about real pairs, in both languages. What each pair is for stands in docs/demo-catalog.md; figures
// are worked out by hand beside each.
#include "tests/support/headless.h"
#include "tests/ui/samples.h"
#include "ui/words/pair_words.h"

#include <doctest/doctest.h>

#include <stdexcept>
#include <string>
#include <vector>

namespace {

using core::Basis;
using core::Nutrient;
using Sentences = std::vector<std::string>;

ui::PairWords words(const char* left, const char* right, Basis basis, const std::string& code)
{
    return *test::pair_state(test::demo_product(left), test::demo_product(right), basis, test::language(code)).pair;
}

const ui::RowWords& row(const ui::PairWords& pair, Nutrient nutrient)
{
    for (const auto& one : pair.rows)
        if (one.nutrient == nutrient)
            return one;
    throw std::out_of_range("no such row");
}

/// "0.5 g | 3%"
std::string figure(const ui::FigureWords& words)
{
    return words.amount + " | " + words.percent;
}

std::vector<std::string> basis_texts(const ui::PairWords& pair)
{
    std::vector<std::string> texts;
    for (const auto& basis : pair.bases)
        texts.push_back(basis.words);
    return texts;
}

constexpr auto strands = "9520141001120";
constexpr auto granola = "9520208001131";
constexpr auto chips = "9520366004012";
constexpr auto salted = "9520366004029";
constexpr auto kit = "9520777012019";
constexpr auto lasagna = "9520777012026";
constexpr auto cup = "9520427005033";
constexpr auto bottle = "9520427005088";
constexpr auto toddler = "9520427005095";
constexpr auto plain = "9520427005057";

} // namespace

TEST_CASE("pair words: servings that differ are said first, and both heads tell theirs")
{
    const auto english = words(strands, granola, Basis::Serving, "en");
    CHECK(english.first == Sentences{"The servings differ: 40 g on the left, 54 g on the right."});
    CHECK(english.sides[0] == ui::SideWords{"Left", "Bran strands", "Quillford Mills",
                                            "About 12 servings, 2/3 cup (40 g) each", "17.5 oz (496 g)"});
    CHECK(english.sides[1] == ui::SideWords{"Right", "Oat granola, almond", "Dunmarrow",
                                            "About 6 servings, 1/2 cup (54 g) each", "12 oz (340 g)"});
    CHECK(basis_texts(english) ==
          std::vector<std::string>{"One serving", "Whole package", "Same amount: 100 g", "Other amount"});
    const auto spanish = words(strands, granola, Basis::Serving, "es");
    CHECK(spanish.first == Sentences{"Las porciones no son iguales: 40 g a la izquierda, 54 g a la derecha."});
    CHECK(spanish.sides[0].place == "Izquierda");
    CHECK(spanish.sides[0].servings == "Aprox. 12 porciones de 2/3 cup (40 g)");
    CHECK(basis_texts(spanish) ==
          std::vector<std::string>{"Una porción", "Todo el paquete", "Igual cantidad: 100 g", "Otra cantidad"});
}

TEST_CASE("pair words: each finding has its words, calories among them fewer")
{
    const auto english = words(strands, granola, Basis::Serving, "en");
    const auto spanish = words(strands, granola, Basis::Serving, "es");
    struct Case {
        Nutrient nutrient;
        std::string left, right, english, spanish;
    };
    const Case cases[] = {
        {Nutrient::Calories, "90 | ", "230 | ", "Left has fewer", "Izquierda: menos"},
        {Nutrient::TotalFat, "1.5 g | 2%", "9 g | 12%", "Left has less", "Izquierda: menos"},
        {Nutrient::TransFat, "0 g | ", "0 g | ", "Same figure", "La misma cifra"},
        {Nutrient::Sodium, "130 mg | 6%", "80 mg | 3%", "Left has more", "Izquierda: más"},
        {Nutrient::DietaryFiber, "18 g | 64%", "4 g | 14%", "Left has more", "Izquierda: más"},
    };
    for (const auto& c : cases) {
        const auto& one = row(english, c.nutrient);
        CAPTURE(one.name);
        CHECK(figure(one.left) == c.left);
        CHECK(figure(one.right) == c.right);
        CHECK(one.finding == c.english);
        CHECK(one.remarks == Sentences{});
        CHECK(row(spanish, c.nutrient).finding == c.spanish);
    }
    const auto& soluble = row(english, Nutrient::SolubleFiber);
    CHECK(soluble.right.amount == "not printed");
    CHECK(soluble.finding == "Not printed");
    CHECK(row(spanish, Nutrient::SolubleFiber).right.amount == "no aparece");
}

// Fat 3 g (2.75 to 3.25) and 3.5 g (3.25 to 3.75) in 30 g each (29.5 to 30.5): 100 g may hold the same.
TEST_CASE("pair words: too close to tell is said as such, and the guide's limit with it")
{
    const auto english = words("9520310003023", "9520310003030", Basis::SameAmount, "en");
    CHECK(english.first ==
          Sentences{"One serving is 30 g on both.",
                    "5 and 20 are a guide for one serving. In equal amounts the line only shows where each stands."});
    CHECK(row(english, Nutrient::TotalFat).finding == "Too close to tell");
    const auto spanish = words("9520310003023", "9520310003030", Basis::SameAmount, "es");
    CHECK(
        spanish.first ==
        Sentences{
            "Una porción es de 30 g en los dos.",
            "5 y 20 son una guía para una porción. En cantidades iguales la línea solo muestra dónde está cada uno."});
    CHECK(row(spanish, Nutrient::TotalFat).finding == "No se distingue");
}

// Common practice: 2 % x 9 = 18 % as taught. 55 mg stand for 52.5 to 57.5 mg (21 CFR 101.9(c)(4)); nine times that are
// 472.5 to 517.5 mg, of 2,300 mg 20.54 to 22.5 %. Fat 7 g: 6.5 to 7.5 g, of 78 g in nine servings 75 to 86.54 %.
// Saturated fat 1 g: 0.75 to 1.25 g, of 20 g 33.75 to 56.25 %. Sugars 0 g: below 0.5 g, nine times below 4.5 g.
TEST_CASE("pair words: what a multiplied figure hides is said as a range, with its reading")
{
    const auto english = words(chips, salted, Basis::Package, "en");
    CHECK(figure(row(english, Nutrient::Sodium).left) == "495 mg | 18%");
    CHECK(row(english, Nutrient::Sodium).remarks.front() == "Left: 2% × 9 = 18%; it can be 20.5 to 22.5%, high.");
    CHECK(row(english, Nutrient::TotalFat).remarks.front() == "Left: 9% × 9 = 81%; it can be 75 to 86.6%, high.");
    CHECK(row(english, Nutrient::SaturatedFat).remarks.front() == "Left: 5% × 9 = 45%; it can be 33.7 to 56.3%, high.");
    CHECK(row(english, Nutrient::TotalSugars).remarks.front() ==
          "Left: so small a figure, 9 times, may be up to 4.5 g.");
    const auto spanish = words(chips, salted, Basis::Package, "es");
    CHECK(row(spanish, Nutrient::Sodium).remarks.front() ==
          "Izquierda: 2% × 9 = 18%; puede ser de 20.5 a 22.5%, alto.");
    CHECK(row(spanish, Nutrient::TotalSugars).remarks.front() ==
          "Izquierda: una cifra tan pequeña, 9 veces, puede llegar a 4.5 g.");
    CHECK(row(words(chips, salted, Basis::Serving, "en"), Nutrient::Sodium).remarks == Sentences{});
    // 25 % x 3.5 = 87.5 %, and halves go up: what does not come out by hand is said to be about.
    const auto beans = words("520417009019", "9520634009022", Basis::Package, "en");
    const auto beans_es = words("520417009019", "9520634009022", Basis::Package, "es");
    const auto says = [](const ui::PairWords& pair, const std::string& sum) {
        return std::ranges::any_of(pair.rows, [&](const auto& row) {
            return std::ranges::any_of(row.remarks,
                                       [&](const auto& remark) { return remark.find(sum) != std::string::npos; });
        });
    };
    CHECK(says(beans, "25% × 3.5 = about 88%; it can be"));
    CHECK(says(beans_es, "25% × 3.5 = aprox. 88%; puede ser de"));
    CHECK(!says(english, "about")); // whole servings come out
    // Vitamin D 0 mcg and 0 %: what prints so may be a tenth of 2.5 % of a day above 20 % in nine servings, not in
    // eight.
    CHECK(row(english, Nutrient::VitaminD).remarks ==
          Sentences{"Left: 0% × 9 = 0%; it can be 0 to 22.5%: anything from low to high.",
                    "Right: 0% × 8 = 0%; it can be 0 to under 20%: low or between 5 and 20."});
    CHECK(row(spanish, Nutrient::VitaminD).remarks.front() ==
          "Izquierda: 0% × 9 = 0%; puede ser de 0 a 22.5%: desde bajo hasta alto.");
}

// Common practice: 4 g are 5 %, x 2 = 10 %; 430 mg are 19 %, x 2 = 38 %; 1 1/2 cups, 2 servings: 3 cups.
TEST_CASE("pair words: a package that reads otherwise than its serving says so, and tells its cups")
{
    const auto english = words(kit, lasagna, Basis::Package, "en");
    CHECK(figure(row(english, Nutrient::Calories).left) == "480 | ");
    CHECK(figure(row(english, Nutrient::TotalFat).left) == "8 g | 10%");
    CHECK(row(english, Nutrient::TotalFat).remarks.front() ==
          "Left: low in one serving, between 5 and 20 in the package.");
    CHECK(figure(row(english, Nutrient::Sodium).left) == "860 mg | 38%");
    CHECK(row(english, Nutrient::Sodium).remarks.front() ==
          "Left: between 5 and 20 in one serving, high in the package.");
    const auto two = core::compare(test::demo_product(kit).label, test::demo_product(lasagna).label, Basis::MyAmount,
                                   {}, {core::MyAmount::Of::Servings, {2, 1}});
    CHECK(row(ui::pair_words(two, test::demo_product(kit), test::demo_product(lasagna), test::language("en")),
              Nutrient::Sodium)
              .remarks.front() ==
          "Left: between 5 and 20 in one serving, high in this amount."); // two servings of it are no package of others
    CHECK(english.sides[0].net == "The package: 3 cups · 14.7 oz (416 g)");
    CHECK(words(chips, salted, Basis::Package, "en").sides[0].net == "The package: 9 oz (255 g)"); // not "9 oz" twice
    const auto spanish = words(kit, lasagna, Basis::Package, "es");
    CHECK(row(spanish, Nutrient::Sodium).remarks.front() ==
          "Izquierda: entre 5 y 20 en una porción, alto en el paquete.");
    CHECK(spanish.sides[0].net == "El paquete: 3 cups · 14.7 oz (416 g)");
    CHECK(words(kit, lasagna, Basis::Serving, "en").sides[0].net == "14.7 oz (416 g)");
}

TEST_CASE("pair words: grams beside millilitres are shown and not compared in equal amounts")
{
    const auto english = words(cup, bottle, Basis::SameAmount, "en");
    CHECK(
        english.first ==
        Sentences{"One serving is a weight, the other a volume: 1 container (170 g) on the left, 1 bottle (207 mL) on "
                  "the right.",
                  "One label counts in grams, the other in milliliters: equal amounts cannot be set side by side. One "
                  "serving and the whole package can.",
                  "Shown here: one serving of each.", "What can be compared: one serving, whole package."});
    CHECK(basis_texts(english)[2] == "Same amount");
    for (const auto& one : english.rows)
        CHECK(one.finding == "");
    CHECK(figure(row(english, Nutrient::TotalSugars).left) == "26 g | ");
    const auto spanish = words(cup, bottle, Basis::SameAmount, "es");
    CHECK(
        spanish.first ==
        Sentences{"Una porción es un peso y la otra un volumen: 1 container (170 g) a la izquierda, 1 bottle (207 mL) "
                  "a la derecha.",
                  "Una etiqueta cuenta en gramos y la otra en mililitros: no se pueden poner cantidades iguales lado a "
                  "lado. Una porción y todo el paquete, sí.",
                  "Aquí se muestra una porción de cada uno.",
                  "Lo que sí se puede comparar: una porción, todo el paquete."});
    const auto serving = words(cup, bottle, Basis::Serving, "en");
    CHECK(serving.first.size() == 1);
    CHECK(row(serving, Nutrient::TotalSugars).finding == "Left has more");
    CHECK(serving.sides[0].servings == "The package is one serving: 1 container (170 g)");
}

TEST_CASE("pair words: labels for unlike ages are shown and not compared")
{
    const auto english = words(toddler, plain, Basis::Serving, "en");
    CHECK(english.first ==
          Sentences{"The servings differ: 113 g on the left, 170 g on the right.",
                    "The two labels are for different ages. Their figures are shown but not compared."});
    for (const auto& one : english.rows) {
        CHECK(one.finding == "");
        CHECK(one.remarks == Sentences{});
    }
    CHECK(words(toddler, plain, Basis::Package, "es").first ==
          Sentences{"Las porciones no son iguales: 113 g a la izquierda, 170 g a la derecha.",
                    "Las dos etiquetas son para edades distintas. Sus cifras se muestran pero no se comparan.",
                    "Aquí se muestra una porción de cada uno."});
}

TEST_CASE("pair words: an older panel is named with its side")
{
    const auto older = "9520588008041";
    const auto newer = "520417008036";
    CHECK(words(older, newer, Basis::Serving, "en").first.back() ==
          "The left label is from before the rule of 2016. Its % Daily Values count from other amounts.");
    CHECK(words(newer, older, Basis::Serving, "en").first.back() ==
          "The right label is from before the rule of 2016. Its % Daily Values count from other amounts.");
    CHECK(words(newer, older, Basis::Serving, "es").first.back() ==
          "La etiqueta de la derecha es anterior a la regla de 2016. Sus % del Valor Diario se cuentan con otras "
          "cantidades.");
}

TEST_CASE("pair words: servings that vary cannot be multiplied, and that is said")
{
    const auto english = words("520417002072", "9520233002028", Basis::Package, "en");
    REQUIRE(english.first.size() == 4);
    CHECK(english.first[1] ==
          "“Servings varied” gives no number to multiply by. So the whole package cannot be worked out.");
    CHECK(english.first[2] == "Shown here: one serving of each.");
    CHECK(english.first[3] == "What can be compared: one serving, same amount: 100 g.");
    CHECK(english.sides[0].servings == "Servings varied, 2 oz (56 g) each");
    CHECK(words("520417002072", "9520233002028", Basis::Package, "es").first[1] ==
          "“Porciones variadas” no da un número para multiplicar. Por eso no se puede calcular todo el paquete.");
}

TEST_CASE("pair words: what a label calls not significant is told as its statement, never as 0")
{
    const auto english = words("520417001013", "9520141001069", Basis::Serving, "en");
    const auto& fiber = row(english, Nutrient::DietaryFiber);
    CHECK(figure(fiber.left) == "not significant | ");
    CHECK(fiber.left.percent_value == std::nullopt);
    CHECK(figure(fiber.right) == "7 g | 25%");
    CHECK(row(words("520417001013", "9520141001069", Basis::Serving, "es"), Nutrient::DietaryFiber).left.amount ==
          "no significativo");
    CHECK(row(english, Nutrient::Protein).left.amount == "less than 1 g");
    const auto& zinc = row(english, Nutrient::Zinc);
    CHECK(figure(zinc.left) == "not printed | ");
    CHECK(zinc.finding == "Not printed");
}

TEST_CASE("pair words: no pair of the demo catalog leaves a placeholder or an empty name behind")
{
    const auto& products = test::demo_products();
    for (std::size_t i = 0; i + 1 < products.size(); ++i)
        for (const std::string code : {"en", "es"})
            for (const auto basis : {Basis::Serving, Basis::Package, Basis::SameAmount}) {
                const auto pair = *test::pair_state(products[i], products[i + 1], basis, test::language(code)).pair;
                std::string all;
                for (const auto& sentence : pair.first)
                    all += sentence + "\n";
                for (const auto& one : pair.rows) {
                    CHECK(!one.name.empty());
                    CHECK(!(one.left.amount + one.left.percent).empty());
                    CHECK(!(one.right.amount + one.right.percent).empty());
                    for (const auto& remark : one.remarks)
                        all += remark + "\n";
                }
                CAPTURE(all);
                CHECK(all.find('{') == std::string::npos);
                CHECK(all.find("  ") == std::string::npos);
                CHECK(all.find(" ,") == std::string::npos);
            }
}
