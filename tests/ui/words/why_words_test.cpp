// Where a figure comes from, in the words of a class. Every number is worked out beside it by the paragraph it names.
#include "tests/support/headless.h"
#include "tests/support/label_maker.h"
#include "tests/ui/samples.h"
#include "ui/words/why_words.h"

#include <doctest/doctest.h>

#include <string>

using core::Basis;
using core::Nutrient;

namespace {

std::string said(const ui::WhyWords& why)
{
    std::string all = why.title + "\n";
    for (const auto& line : why.lines)
        all += line.words + "\n";
    return all;
}

std::string of_pair(Basis basis, Nutrient nutrient, const char* left = "9520141001120",
                    const char* right = "9520208001131", const char* language = "en")
{
    return said(
        *test::why_state(test::demo_product(left), test::demo_product(right), basis, nutrient, test::language(language))
             .why);
}

bool has(const std::string& all, const std::string& words)
{
    return all.find(words) != std::string::npos;
}

} // namespace

TEST_CASE("why words: a printed line, what it can stand for, and the paragraph of the rule")
{
    // 160 mg is to the nearest 10 mg above 140 mg, 101.9(c)(4); 160/2300 = 6.96%.
    const auto product = test::make_product("952000000001", "Oat squares",
                                            test::make_label("30 g", "about 9", {{Nutrient::Sodium, "160", "7%"}}));
    const auto all = said(ui::why_words(product, Nutrient::Sodium, {}, test::language("en")));
    CHECK(has(all, "Sodium: where this comes from\nOat squares\nThe label prints 160 mg, 7%.\n"));
    CHECK(has(all, "160 mg stands for 155 mg to just under 165 mg (21 CFR 101.9(c)(4))."));
    // 7% of 2,300 mg: 6.5% is 149.5 mg, 7.5% is 172.5 mg. Neither cuts 155 to 165.
    CHECK(has(all, "7% of the Daily Value of 2,300 mg stands for 149.5 mg to just under 172.5 mg"));
    CHECK(has(all, "tells nothing more"));
    CHECK(has(all, "up to 120% of the label (21 CFR 101.9(g))."));
    CHECK(has(all, "up to 140 mg. That is 6%")); // 21 CFR 101.61(b)(4)
}

TEST_CASE("why words: a line that is not printed is not 0")
{
    const auto product = test::make_product("952000000001", "Oat squares", test::make_label("30 g", "about 9", {}));
    const auto all = said(ui::why_words(product, Nutrient::Iron, {}, test::language("en")));
    CHECK(has(all, test::language("en").text(ui::TextId::why_not_printed)));
    CHECK_FALSE(has(all, " 0 mg"));
}

TEST_CASE("why words: the whole package as taught, and the servings that net quantity and serving size allow")
{
    const auto all = of_pair(Basis::Package, Nutrient::AddedSugars);
    // 5 g and "about 12 servings", 40 g each, of 496 g net.
    CHECK(has(all, "5 g times 12 is 60 g."));
    CHECK(has(all, "The net quantity, 17.5 oz (496 g), narrows that."));
    CHECK(has(all, "10% times 12 is 120%."));
    // 4.5 g x 12.22 is 54.99 g; 5.5 g x 12.5 is 68.75 g.
    CHECK(has(all, "Counted with these ranges, it is 54.99 g to just under 68.75 g here."));
    // 60 g / 4 g, 66 g / 4 g: a class counts 4 g as a teaspoon (common practice).
    CHECK(has(all, "60 g of added sugars is about 15 teaspoons."));
    CHECK(has(all, "66 g of added sugars is about 16 1/2 teaspoons."));
    CHECK(has(all, "5 and 20 are meant for one serving."));
}

TEST_CASE("why words: serving size and servings of one label tell what they stand for")
{
    // "About 8" is 7.5 to 8.5, 101.9(b)(8)(i); 42 g is 41.5 to 42.5 g, (b)(7)(ii); 339 g / 42.5 g, 341 g / 41.5 g.
    auto label = test::make_label("42 g", "about 8", {});
    label.serving.household = "1 cup";
    label.net_quantity = core::parse_net_quantity("12 oz (340 g)");
    const auto product = test::make_product("952000000001", "Oat squares", label);
    const auto all = said(ui::sizes_why_words(product, test::language("en")));
    CHECK(has(all, "Serving size: where this comes from\nOat squares\nThe label prints 1 cup (42 g).\n"));
    CHECK(has(all, "The household measure, 1 cup, is what defines the serving"));
    CHECK(has(all, "A serving of 42 g stands for 41.5 to 42.5 g (21 CFR 101.9(b)(7)(ii))."));
    CHECK(has(all, "they stand for 7.97"));
    CHECK(has(all, "The net quantity, 12 oz (340 g), narrows that."));
    CHECK(has(all, "Entered on"));
    const auto exact = test::make_product("952000000001", "Oat squares", test::make_label("42 g", "8", {}));
    CHECK(has(
        said(ui::sizes_why_words(exact, test::language("en"))),
        "The label prints 8 as its servings, without “about”. So it is exactly that many (21 CFR 101.9(b)(8)(i))."));
    const auto nothing = test::make_product("952000000001", "Oat squares", {});
    CHECK_FALSE(has(said(ui::sizes_why_words(nothing, test::language("es"))), "\n\n"));
    CHECK_FALSE(has(said(ui::sizes_why_words(nothing, test::language("es"))), " 0 "));
}

TEST_CASE("why words: equal amounts are divided out as on paper, and calories stand beside a day")
{
    const auto all = of_pair(Basis::SameAmount, Nutrient::Calories);
    CHECK(has(all, "90 ÷ 40 g × 100 = 225 in 100 g."));
    CHECK(has(all, "230 ÷ 54 g × 100 = 426 in 100 g.")); // 425.9
    CHECK(has(all, "A serving of 54 g stands for 53.5 to 54.5 g (21 CFR 101.9(b)(7)(ii))."));
    CHECK(has(all, "Calories in a day\nThis is a table to look at. It is not about any one person."));
    CHECK_FALSE(has(of_pair(Basis::SameAmount, Nutrient::Sodium), "Calories in a day"));
}

TEST_CASE("why words: a finding gives the edges that decide it, and a tie a value that both can be")
{
    // 130 mg from 127.5 mg on, 80 mg below 82.5 mg: both to the nearest 5 mg, 101.9(c)(4).
    CHECK(has(of_pair(Basis::Serving, Nutrient::Sodium),
              "the most behind the right figure is 82.5 mg, the least behind the left one is 127.5 mg."));
    CHECK(has(of_pair(Basis::Package, Nutrient::Iron, "9520366004012", "9520366004029"),
              "Both can be 3.15 mg, and either can be a little more than the other."));
    CHECK(has(of_pair(Basis::Serving, Nutrient::Iron, "9520366004012", "9520366004029"),
              "Both labels print the same. The foods may still differ a little"));
}

TEST_CASE("why words: a nutrient in the list of those not significant has its legal limit")
{
    const auto all = of_pair(Basis::Package, Nutrient::SaturatedFat, "520417001013", "9520141001069");
    // 21 CFR 101.9(c)(2)(i): less than 0.5 g a serving is declared as zero and may be left out.
    CHECK(has(all, "it may hold from 0 up to 0.5 g a serving (21 CFR 101.9(c)(2))."));
}

TEST_CASE("why words: Spanish leaves nothing but names and citations in English")
{
    const auto all = of_pair(Basis::Package, Nutrient::Iron, "9520366004012", "9520366004029", "es");
    CHECK(has(all, "0.4 mg puede ser de 0.35 mg a un poco menos de 0.45 mg"));
    CHECK(has(all, "Se enseña a buscar más (costumbre en las clases de etiquetas)."));
    for (const char* english : {"practice", " and ", "serving", "label ", "stands"})
        CHECK_FALSE(has(all, english));
}
