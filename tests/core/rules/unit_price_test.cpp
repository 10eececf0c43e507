#include "core/label/label.h"
#include "core/rules/unit_price.h"

#include <doctest/doctest.h>

#include <string>

namespace {

using core::cents;
using core::Goods;
using core::PriceRounding;
using core::PriceWhy;
using core::ShownPrice;
using U = core::TradeUnit;

core::Label package(const std::string& net, const std::string& servings = "9")
{
    core::Label label;
    if (!net.empty())
        label.net_quantity = core::parse_net_quantity(net);
    label.servings = core::parse_servings(servings).value();
    return label;
}

ShownPrice shown(std::int64_t cents, const std::string& net, PriceRounding rounding = PriceRounding::TenthCent)
{
    return core::unit_price(core::cents(cents), core::contents_of(net).value(), Goods::Weight, {U::Ounce}, rounding)
        .value()
        .shown;
}

} // namespace

TEST_CASE("unit price: below a dollar to the tenth, from a dollar on to the cent, ties up")
{
    CHECK(shown(399, "12 oz") == ShownPrice{333, true, false}); // 33.25
    CHECK(shown(399, "12 oz", PriceRounding::WholeCent) == ShownPrice{330, false, false});
    CHECK(shown(1999, "20 oz") == ShownPrice{1000, false, false}); // 99.95 is a dollar
    CHECK(shown(3997, "40 oz") == ShownPrice{999, true, false});   // 99.925 is none
    CHECK(shown(2000, "20 oz") == ShownPrice{1000, false, false}); // a dollar exactly
    CHECK(shown(2010, "20 oz") == ShownPrice{1010, false, false}); // 100.5
    CHECK(shown(1, "32 oz") == ShownPrice{0, true, true});         // something, less than is shown
    CHECK(shown(7, "16 oz", PriceRounding::WholeCent) == ShownPrice{0, false, true});
    CHECK(shown(8, "16 oz", PriceRounding::WholeCent) == ShownPrice{10, false, false});
}

TEST_CASE("unit price: several packages count as one whole")
{
    const auto price = core::unit_price(cents(799), core::contents_of("12 - 12 FL OZ (355 mL) CANS").value(),
                                        Goods::LiquidVolume, {U::FluidOunce}, PriceRounding::TenthCent);
    REQUIRE(price);
    CHECK(price->packages == 12);
    CHECK(price->shown == ShownPrice{55, true, false}); // 799 / 144
}

TEST_CASE("unit price: a serving by the printed number of servings")
{
    const auto nine =
        core::serving_price(cents(399), core::parse_servings("about 9").value(), PriceRounding::TenthCent);
    REQUIRE(nine);
    CHECK(nine->shown == ShownPrice{443, true, false}); // 44.33
    CHECK(nine->about);
    const auto half = core::serving_price(cents(100), core::parse_servings("2.5").value(), PriceRounding::WholeCent);
    CHECK(half->shown == ShownPrice{400, false, false});
    CHECK_FALSE(half->about);
    CHECK(core::serving_price(cents(150), core::parse_servings("single").value(), PriceRounding::TenthCent)->shown ==
          ShownPrice{1500, false, false});
    CHECK_FALSE(core::serving_price(cents(399), core::parse_servings("varied").value(), PriceRounding::TenthCent));
    CHECK_FALSE(core::serving_price(cents(399), {}, PriceRounding::TenthCent));
}

TEST_CASE("unit price: two sides in one unit, exactly compared")
{
    struct Case {
        const char* why;
        const char* left;
        int left_cents;
        const char* right;
        int right_cents;
        PriceWhy answer;
        std::optional<std::strong_ordering> order;
    };
    using order = std::strong_ordering;
    const Case cases[] = {
        {"less an ounce", "12 oz (340 g)", 399, "18 oz (510 g)", 449, PriceWhy::Comparable, order::greater},
        {"equal is equal", "12 oz", 300, "1 lb", 400, PriceWhy::Comparable, order::equal},
        {"a thousandth of a cent tells", "1000 oz", 100'000, "1001 oz", 100'099, PriceWhy::Comparable, order::greater},
        {"a pack against a bottle", "6 - 12 FL OZ CANS", 360, "2 qt", 319, PriceWhy::Comparable, order::greater},
        {"metric against customary", "500 g", 500, "1 lb", 454, PriceWhy::Comparable, order::less},
        {"pieces against pieces", "12 ct", 240, "1 dozen", 239, PriceWhy::Comparable, order::greater},
        {"weight against volume", "12 oz", 300, "12 fl oz", 300, PriceWhy::UnlikeGoods, {}},
        {"weight against pieces", "12 oz", 300, "12 ct", 300, PriceWhy::UnlikeGoods, {}},
        {"berries against juice", "1 DRY PINT (551 mL)", 300, "551 mL", 300, PriceWhy::UnlikeGoods, {}},
        {"no net quantity", "", 300, "12 oz", 300, PriceWhy::NetQuantityMissing, {}},
        {"an unclear one", "12 oz", 300, "6 pack 2 oz", 300, PriceWhy::NetQuantityUnclear, {}},
        {"a price is missing", "12 oz", 0, "12 oz", 300, PriceWhy::PriceMissing, {}},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto price = [](int number) { return number ? std::optional(cents(number)) : std::nullopt; };
        const auto pair =
            core::price_pair(package(c.left), price(c.left_cents), package(c.right), price(c.right_cents), {});
        CHECK(pair.why == c.answer);
        CHECK(pair.order == c.order);
        if (c.answer == PriceWhy::Comparable)
            CHECK(pair.sides[0].unit->unit == pair.sides[1].unit->unit);
        CHECK(pair.sides[1].serving.has_value());
    }
}

TEST_CASE("unit price: the figure of the system that the unit is of")
{
    // 341 g is not what 12 oz are: the metric figure is used for a metric unit, the customary one for ounces.
    const auto metric = core::unit_price(cents(341), core::contents_of("12 oz (341 g)").value(), Goods::Weight,
                                         {U::Gram, 100}, PriceRounding::TenthCent);
    CHECK(metric->shown == ShownPrice{1000, false, false});
    CHECK(metric->amount.unit == U::Gram);
    const auto ounces = core::unit_price(cents(240), core::contents_of("12 oz (341 g)").value(), Goods::Weight,
                                         {U::Ounce}, PriceRounding::TenthCent);
    CHECK(ounces->shown == ShownPrice{200, true, false});
    CHECK(ounces->amount.unit == U::Ounce);
}

TEST_CASE("unit price: the largest packages and the highest prices stay exact")
{
    const auto large = core::contents_of("1000 - 999,999 gal").value();
    const auto first =
        core::unit_price(core::dearest, large, Goods::LiquidVolume, {U::FluidOunce}, PriceRounding::TenthCent).value();
    const auto second =
        core::unit_price(cents(999'998), large, Goods::LiquidVolume, {U::FluidOunce}, PriceRounding::TenthCent).value();
    CHECK(core::cheaper_first(first, second) == std::strong_ordering::greater);
    CHECK(core::cheaper_first(second, first) == std::strong_ordering::less);
}
