#include "core/label/label.h"
#include "tests/support/headless.h"
#include "ui/words/price_words.h"

#include <doctest/doctest.h>

#include <string>

namespace {

using core::cents;
using core::ShownPrice;
using U = core::TradeUnit;

core::Label package(const std::string& net, const std::string& servings)
{
    core::Label label;
    if (!net.empty())
        label.net_quantity = core::parse_net_quantity(net);
    if (!servings.empty())
        label.servings = core::parse_servings(servings).value();
    return label;
}

/// Said wherever a unit price stands.
const std::string rule =
    "Price ÷ net quantity, rounded as in NIST Handbook 130. It holds the rule for Uniform Unit Pricing.\n";

std::string said(const core::PricePair& pair, const char* language = "en")
{
    std::string all;
    for (const auto& sentence : ui::price_section(pair, test::language(language)).sentences)
        all += sentence + "\n";
    return all;
}

} // namespace

TEST_CASE("price words: dollars, cents and tenths of them")
{
    const auto& english = test::language("en");
    CHECK(ui::money_words(cents(399)) == "$3.99");
    CHECK(ui::money_words(cents(5)) == "$0.05");
    CHECK(ui::money_words(core::dearest) == "$9,999.99");
    CHECK(ui::shown_price_words(ShownPrice{333, true, false}, english) == "33.3 cents");
    CHECK(ui::shown_price_words(ShownPrice{330, false, false}, english) == "33 cents");
    CHECK(ui::shown_price_words(ShownPrice{10, false, false}, english) == "1 cent");
    CHECK(ui::shown_price_words(ShownPrice{10, true, false}, english) == "1.0 cents");
    CHECK(ui::shown_price_words(ShownPrice{1000, false, false}, english) == "$1.00");
    CHECK(ui::shown_price_words(ShownPrice{0, true, true}, english) == "less than 0.1 cents");
    CHECK(ui::shown_price_words(ShownPrice{0, false, true}, english) == "less than 1 cent");
    CHECK(ui::shown_price_words(ShownPrice{333, true, false}, test::language("es")) == "33.3 centavos");
}

TEST_CASE("price words: amounts as printed, every unit with its word")
{
    const auto& english = test::language("en");
    CHECK(ui::trade_amount_words({10'800'000'000, U::Ounce}, 1, english) == "10.8 oz");
    CHECK(ui::trade_amount_words({12'000'000'000, U::FluidOunce}, 6, english) == "6 packs of 12 fl oz");
    CHECK(ui::trade_amount_words({1'000'000'000'000, U::Gram}, 1, english) == "1,000 g");
    CHECK(ui::trade_amount_words({12'000'000'000, U::Piece}, 1, english) == "12 pieces");
    CHECK(ui::trade_amount_words({1'000'000'000, U::Dozen}, 1, test::language("es")) == "1 docena");
    CHECK(ui::price_unit_words({U::Gram, 100}, english) == "100 g");
    CHECK(ui::price_unit_words({U::Piece, 100}, english) == "100 pieces");
    for (const auto& unit : core::trade_units())
        for (const auto* language : {"en", "es"})
            CHECK_FALSE(ui::price_unit_words({unit.unit}, test::language(language)).empty());
    for (const auto& unit : core::allowed_units())
        CHECK_FALSE(ui::price_unit_words(unit.unit, english).empty());
}

TEST_CASE("price words: which costs less, or that it is the same, or why that is not said")
{
    struct Case {
        core::PricePair pair;
        std::string sentences;
    };
    const auto bag = package("12 oz (340 g)", "about 9");
    const auto box = package("18 oz (510 g)", "varied");
    const Case cases[] = {
        {core::price_pair(bag, cents(399), box, cents(449), {}),
         "Left: $3.99 for 12 oz is 33.3 cents per ounce, about 44.3 cents a serving.\n"
         "Right: $4.49 for 18 oz is 24.9 cents per ounce.\n"
         "Per ounce, right costs less.\n" +
             rule},
        {core::price_pair(bag, cents(300), box, cents(450), {}),
         "Left: $3.00 for 12 oz is 25.0 cents per ounce, about 33.3 cents a serving.\n"
         "Right: $4.50 for 18 oz is 25.0 cents per ounce.\n"
         "Per ounce, both cost the same.\n" +
             rule},
        {core::price_pair(bag, cents(399), package("1200 oz", ""), cents(39901), {}),
         "Left: $3.99 for 12 oz is 33.3 cents per ounce, about 44.3 cents a serving.\n"
         "Right: $399.01 for 1,200 oz is 33.3 cents per ounce.\n"
         "Per ounce, left costs a little less, by less than the prices show.\n" +
             rule},
        {core::price_pair(bag, {}, box, cents(449), {}),
         "Right: $4.49 for 18 oz is 24.9 cents per ounce.\nLeft: no price was typed.\n" + rule},
        {core::price_pair(package("", "9"), cents(399), box, cents(449), {}),
         "Left: $3.99 is 44.3 cents a serving.\nRight: $4.49 for 18 oz is 24.9 cents per ounce.\n"
         "Left: how much is in the package is not recorded here, so there is no price per unit.\n" +
             rule},
        {core::price_pair(bag, cents(399), package("6 pack 2 oz", ""), cents(449), {}),
         "Left: $3.99 for 12 oz is 33.3 cents per ounce, about 44.3 cents a serving.\nRight: the price is $4.49.\n"
         "Right: it is not clear how much the whole package holds, so there is no price per unit.\n" +
             rule},
        {core::price_pair(bag, cents(399), package("12 fl oz", ""), cents(399), {}),
         "Left: $3.99 for 12 oz is 33.3 cents per ounce, about 44.3 cents a serving.\n"
         "Right: $3.99 for 12 fl oz is 33.3 cents per fluid ounce.\n"
         "The two are sold by unlike measures, such as weight and volume. So these prices are not compared.\n" +
             rule},
        {core::price_pair(bag, {}, box, {}, {}), ""},
    };
    for (const auto& c : cases) {
        CAPTURE(c.sentences);
        CHECK(said(c.pair) == c.sentences);
    }
    CHECK(said(cases[0].pair, "es") ==
          "Izquierda: $3.99 por 12 oz son 33.3 centavos por onza, unos 44.3 centavos por porción.\n"
          "Derecha: $4.49 por 18 oz son 24.9 centavos por onza.\n"
          "Por onza, el de la derecha cuesta menos.\n"
          "Precio ÷ contenido neto, redondeado según el Manual 130 del NIST (precio por unidad).\n");
}
