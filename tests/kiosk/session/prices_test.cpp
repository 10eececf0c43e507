// Shelf prices at the station: typed as on a till, kept with the packages, gone with them.
#include "tests/kiosk/session/station.h"

#include <doctest/doctest.h>

#include <string>

namespace test {
namespace {

using ui::ScreenId;
using ui::Side;

struct Till : Station {
    Till()
    {
        for (auto [digits, net] : {std::pair(shelf::oats, "12 oz (340 g)"), std::pair(shelf::wheat, "18 oz (510 g)"),
                                   std::pair(shelf::rice, "12 fl oz (355 mL)")}) {
            auto product = store.find(core::Gtin::parse(digits).value()).value();
            product.label.net_quantity = core::parse_net_quantity(net);
            store.put(product);
        }
        scan(shelf::oats);
        scan(shelf::wheat);
    }

    void type(Side side, const std::string& digits)
    {
        ask(ui::PickPriceSide{side});
        for (const char digit : digits)
            ask(ui::TypePriceDigit{digit - '0'});
    }

    [[nodiscard]] std::string said() const
    {
        std::string all;
        if (state().price_words)
            for (const auto& sentence : state().price_words->sentences)
                all += sentence + "\n";
        return all;
    }
};

} // namespace

TEST_CASE("prices: typed from the right as on a till, and said in sentences on both screens")
{
    Till till;
    CHECK(till.said().empty());
    const auto before = till.state().pair->sections.size(); // what the packages say
    till.ask(ui::OpenPrices{});
    CHECK(till.state().screen == ScreenId::Prices);
    till.type(Side::Left, "399");
    till.type(Side::Right, "449");
    CHECK(till.said() ==
          "Left: $3.99 for 12 oz is 33.3 cents per ounce, $2.00 a serving.\n"
          "Right: $4.49 for 18 oz is 24.9 cents per ounce, $2.25 a serving.\n"
          "Per ounce, right costs less.\n"
          "Price ÷ net quantity, rounded as in NIST Handbook 130. It holds the rule for Uniform Unit Pricing.\n");
    till.ask(ui::ShowPair{});
    CHECK(till.state().screen == ScreenId::Pair);
    REQUIRE(till.state().pair->sections.size() == before + 1);
    CHECK(till.state().pair->sections.back() == *till.state().price_words);
    till.ask(ui::GoBack{});
    CHECK(till.state().screen == ScreenId::OneLabel); // not back to the keys
}

TEST_CASE("prices: erase takes a digit, clear takes all, and a digit too many changes nothing")
{
    Till till;
    till.ask(ui::OpenPrices{});
    till.ask(ui::TypePriceDigit{0});
    CHECK_FALSE(till.state().prices[0]);
    till.type(Side::Left, "1234567");
    CHECK(till.state().prices[0] == core::cents(123'456)); // the seventh did not fit
    till.ask(ui::ErasePriceDigit{});
    CHECK(till.state().prices[0] == core::cents(12'345));
    till.ask(ui::ClearPrice{});
    CHECK_FALSE(till.state().prices[0]);
    till.ask(ui::ErasePriceDigit{});
    CHECK_FALSE(till.state().prices[0]);
    till.type(Side::Left, "9");
    till.ask(ui::ErasePriceDigit{});
    CHECK_FALSE(till.state().prices[0]);
    till.type(Side::Left, "999999");
    CHECK(till.state().prices[0] == core::dearest);
    till.ask(ui::TypePriceDigit{12});
    till.ask(ui::TypePriceDigit{-1});
    CHECK(till.state().prices[0] == core::dearest);
}

TEST_CASE("prices: gone when the side's product changes, with Start over, and back with Take back")
{
    Till till;
    till.type(Side::Left, "300");
    till.type(Side::Right, "400");
    till.scan(shelf::wheat); // the same package again
    CHECK(till.state().prices[1] == core::cents(400));
    till.scan(shelf::rice); // takes the older side, the left
    CHECK_FALSE(till.state().prices[0]);
    CHECK(till.state().prices[1] == core::cents(400));
    till.ask(ui::StartOver{});
    CHECK_FALSE(till.state().prices[1]);
    CHECK(till.said().empty());
    till.ask(ui::TakeBack{});
    CHECK(till.state().prices[1] == core::cents(400));
    CHECK(till.said().find("Right: $4.00 for 18 oz") != std::string::npos);
}

TEST_CASE("prices: weight against volume is said, and not compared")
{
    Till till;
    till.scan(shelf::rice);
    till.type(Side::Left, "300");
    till.type(Side::Right, "300");
    CHECK(till.said().find("sold by unlike measures") != std::string::npos);
    CHECK(till.said().find("costs less") == std::string::npos);
}

TEST_CASE("prices: nothing to type without two packages; the settings pick unit and rounding")
{
    Station empty;
    empty.ask(ui::OpenPrices{});
    CHECK(empty.state().screen == ScreenId::Welcome);

    Till till;
    kiosk::Settings settings;
    settings.prices.weight = {core::TradeUnit::Gram, 100};
    settings.prices.rounding = core::PriceRounding::WholeCent;
    kiosk::Session session(till.store, station_languages(), settings);
    for (const auto& code : {shelf::oats, shelf::wheat})
        session.take({code, core::Symbology::Unknown, kiosk::Scan::From::Scanner, {}});
    session.apply({ui::OpenPrices{}, ui::TypePriceDigit{3}, ui::TypePriceDigit{0}, ui::TypePriceDigit{0}});
    REQUIRE(session.state().price_words);
    CHECK(session.state().price_words->sentences[0] ==
          "Left: $3.00 for 340 g is 88 cents per 100 g, $1.50 a serving."); // the metric figure for a metric unit
    CHECK(session.state().price_words->sentences[1] == "Right: no price was typed.");
}

} // namespace test
