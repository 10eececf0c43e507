// The ingredient list in words: whole sentences in both languages.
#include "tests/support/headless.h"
#include "tests/ui/samples.h"
#include "ui/words/ingredient_words.h"
#include "ui/words/why_words.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <vector>

namespace {

using Sentences = std::vector<std::string>;

std::string grain(const char* printed, const char* code = "en")
{
    return ui::first_grain_sentence(core::take_apart(printed), test::language(code));
}

Sentences sugars(const char* printed, const char* code = "en")
{
    return ui::sugar_sentences(core::take_apart(printed), test::language(code));
}

core::Product with_ingredients(std::optional<std::string> ingredients)
{
    auto product = test::demo_product("9520366004012"); // prints 0 g of trans fat
    product.label.ingredients = std::move(ingredients);
    return product;
}

bool says(const ui::WhyWords& why, const std::string& words)
{
    return std::ranges::any_of(why.lines, [&](const auto& line) { return line.words == words; });
}

} // namespace

// Sources: 21 CFR 137.105 (flour), USDA guidance on whole grain-rich foods; 21 CFR 101.4(a)(1) (order by weight).
TEST_CASE("ingredient words: the first grain, what decided it, and who says so")
{
    CHECK(grain("Oats, sugar") ==
          "First grain: “Oats” is a whole grain (USDA child nutrition and CACFP guidance on whole grain-rich foods).");
    CHECK(grain("Wheat bran, whole oats").starts_with("First grain: “Wheat bran” is not a whole grain ("));
    CHECK(grain("Masa harina, salt")
              .starts_with("First grain: “Masa harina” counts as a whole grain in child nutrition programs ("));
    CHECK(grain("Rice, salt").starts_with("First grain: “Rice”"));
    CHECK(grain("Tomatoes, salt") == "First grain: the list names none that is known here.");
    CHECK(grain("Tomatoes, salt", "es") == "Primer grano: la lista no nombra ninguno que se conozca aquí.");
    CHECK(grain("Oats, sugar", "es") == "Primer grano: “Oats” es un grano entero (USDA child nutrition and CACFP "
                                        "guidance on whole grain-rich foods).");
}

TEST_CASE("ingredient words: a source that is no publication is named in the reader's language")
{
    CHECK(grain("Fonio") == "First grain: “Fonio” is a whole grain (common practice).");
    CHECK(grain("Fonio", "es") == "Primer grano: “Fonio” es un grano entero (costumbre).");
}

// 21 CFR 101.9(c)(6)(iii).
TEST_CASE("ingredient words: sugars by name as printed, concentrated juice apart, none is no promise")
{
    CHECK(sugars("Oats, Cane Sugar, honey, apple juice concentrate") ==
          Sentences{"Names of sugars: “Cane Sugar”, “honey”.",
                    "Concentrated juice: “apple juice concentrate”. Its sugars count as added in part: those beyond "
                    "the same amount of juice (21 CFR 101.9(c)(6)(iii))."});
    CHECK(sugars("Oats, honey", "es") == Sentences{"Nombres de azúcares: “honey”."});
    CHECK(sugars("Milk") == Sentences{"Names of sugars: the list has none that is known here. It may hold the sugars "
                                      "of fruit and milk all the same."});
    CHECK(sugars("Milk", "es") == Sentences{"Nombres de azúcares: la lista no tiene ninguno que se conozca aquí. Aun "
                                            "así puede tener los azúcares de la fruta y la leche."});
    CHECK(ui::sugar_sources_sentence(core::take_apart("brown sugar, agave"), test::language("en")) ==
          "These count as sugars by rule or custom (USDA, MyPlate, What Are Added Sugars?; common practice).");
    CHECK_FALSE(ui::sugar_sources_sentence(core::take_apart("Milk"), test::language("en")));
}

TEST_CASE("ingredient words: the printed list whole, however long, and where it is looked through in part")
{
    std::string list = "Oats";
    while (list.size() <= core::longest_ingredient_list)
        list += ", oats";
    const auto product = with_ingredients(list);
    const auto section = ui::ingredients_section(product.label, core::take_apart(list), test::language("en"));
    CHECK(section.sentences ==
          Sentences{list,
                    "Ingredients stand in order of weight, the heaviest first. Those after “2% or less” may stand in "
                    "any order.",
                    "The list is very long: only its first part was looked through for what follows."});
    const auto none = with_ingredients(std::nullopt);
    CHECK(ui::ingredients_section(none.label, {}, test::language("en")).sentences ==
          Sentences{"The ingredients were not entered here.",
                    "Look on the package for the first grain, the names of sugars and allergens."});
    CHECK(ui::ingredients_section(none.label, {}, test::language("es")).sentences ==
          Sentences{"Aquí no se anotaron los ingredientes.",
                    "Busque en el paquete el primer grano, los nombres de azúcares y los alérgenos."});
}

// 21 CFR 101.9(c)(2)(ii): below 0.5 g is printed as 0; 101.4(b)(14): the name of the oil.
TEST_CASE("ingredient words: a pair says on which side 0 g of trans fat stands beside such an oil")
{
    const auto left = with_ingredients("Corn, partially hydrogenated soybean oil");
    auto right = with_ingredients("Corn, sunflower oil");
    const auto remarks = [&](const char* code) {
        const auto comparison = core::compare(left.label, right.label, core::Basis::Serving);
        const auto words = ui::pair_words(comparison, left, right, test::language(code));
        return std::ranges::find(words.rows, core::Nutrient::TransFat, &ui::RowWords::nutrient)->remarks;
    };
    CHECK(remarks("en") ==
          Sentences{"Left: 0 g can be up to 0.5 g a serving. The ingredients name partially hydrogenated oil: "
                    "“partially hydrogenated soybean oil”. Classes teach to aim for 0."});
    CHECK(remarks("es") ==
          Sentences{"Izquierda: 0 g puede ser hasta 0.5 g por porción. Los ingredientes nombran aceite parcialmente "
                    "hidrogenado: “partially hydrogenated soybean oil”. En las clases se enseña a buscar 0."});
    CHECK_FALSE(ui::trans_fat_remark(right.label, test::language("en")));
    CHECK_FALSE(ui::trans_fat_remark(with_ingredients(std::nullopt).label, test::language("en")));
}

TEST_CASE("ingredient words: why of trans fat has the two rules, and what the ingredients say of the oil")
{
    const auto why = [](std::optional<std::string> ingredients, core::Nutrient nutrient = core::Nutrient::TransFat) {
        return ui::why_words(with_ingredients(std::move(ingredients)), nutrient, {}, test::language("en"));
    };
    const std::string rules = "Classes teach to aim for 0 g of trans fat (common practice). A printed 0 g can be up to "
                              "0.5 g a serving (21 CFR 101.9(c)(2)(ii)). Oil that is partially "
                              "hydrogenated must be named so in the ingredients (21 CFR 101.4(b)(14)).";
    CHECK(says(why("Corn, partially hydrogenated soybean oil"), rules));
    CHECK(says(why("Corn, partially hydrogenated soybean oil"),
               "The ingredients name partially hydrogenated oil: “partially hydrogenated soybean oil”."));
    CHECK(says(why("Corn"), "No words for partially hydrogenated oil were found in the list that was entered. Look for "
                            "it on the package."));
    CHECK(says(why(std::nullopt), "The ingredients were not entered here. Look at the list on the package. Does it "
                                  "name partially hydrogenated oil?"));
    CHECK_FALSE(says(why("Corn", core::Nutrient::Sodium), rules));
}
