#include "core/label/contents.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using core::Contents;
using core::contents_of;
using core::Goods;
using core::System;
using core::TradeAmount;
using U = core::TradeUnit;

namespace {

TradeAmount milli(std::int64_t thousandths, U unit)
{
    return {thousandths * 1'000'000, unit};
}

TradeAmount whole(std::int64_t number, U unit)
{
    return milli(number * 1000, unit);
}

} // namespace

TEST_CASE("contents: what packages print, by the forms of 21 CFR 101.7")
{
    struct Case {
        const char* printed;
        Contents contents;
    };
    const Case cases[] = {
        {"12 oz (340 g)", {1, {whole(12, U::Ounce), whole(340, U::Gram)}}},
        {"NET WT 10.8 OZ (306g)", {1, {milli(10'800, U::Ounce), whole(306, U::Gram)}}},
        {"16 OZ (1 LB) 454 g", {1, {whole(16, U::Ounce), whole(454, U::Gram)}}},
        {"Net Wt. 1 lb. 4 oz. (567 g)", {1, {whole(20, U::Ounce), whole(567, U::Gram)}}},
        {"20 OZ (1 LB 4 OZ) 567 g", {1, {whole(20, U::Ounce), whole(567, U::Gram)}}},
        {"1 LB (16 OZ) 454 g", {1, {whole(1, U::Pound), whole(454, U::Gram)}}},
        {"1 1/2 LB (680 g)", {1, {milli(1'500, U::Pound), whole(680, U::Gram)}}},
        {"1-1/2 lb", {1, {milli(1'500, U::Pound)}}},
        {"1/2 GAL (1.89 L)", {1, {milli(500, U::Gallon), milli(1'890, U::Litre)}}},
        {"1 PT 0.9 FL OZ (500 mL)", {1, {milli(16'900, U::FluidOunce), whole(500, U::Millilitre)}}},
        {"64 FL. OZ. (2 QT) 1.89 L", {1, {whole(64, U::FluidOunce), milli(1'890, U::Litre)}}},
        {"2 LITERS (67.6 FL OZ)", {1, {whole(2, U::Litre), milli(67'600, U::FluidOunce)}}},
        {"1,000 g", {1, {whole(1000, U::Gram)}}},
        {"340 g", {1, {whole(340, U::Gram)}}},
        {"1 DRY PINT (551 mL)", {1, {whole(1, U::DryPint), whole(551, U::Millilitre)}}},
        {"12 ct", {1, {whole(12, U::Piece)}}},
        {"18 COUNT", {1, {whole(18, U::Piece)}}},
        {"1 dozen", {1, {whole(1, U::Dozen)}}},
        {"12 EGGS NET WT 24 OZ (1 LB 8 OZ) 680 g", {1, {whole(24, U::Ounce), whole(680, U::Gram)}}},
        {"8 COUNT, NET WT 12 OZ (340 g)", {1, {whole(8, U::Piece), whole(12, U::Ounce), whole(340, U::Gram)}}},
        {"12-oz jar", {1, {whole(12, U::Ounce)}}},
        {"75 SQ FT", {1, {whole(75, U::SquareFoot)}}},
    };
    for (const auto& c : cases) {
        CAPTURE(c.printed);
        const auto contents = contents_of(c.printed);
        REQUIRE(contents);
        CHECK(*contents == c.contents);
    }
}

TEST_CASE("contents: several packages in one, and the amount of each")
{
    struct Case {
        const char* printed;
        Contents contents;
    };
    const Case cases[] = {
        {"6 - 12 FL OZ (355 mL) CANS", {6, {whole(12, U::FluidOunce), whole(355, U::Millilitre)}}},
        {"12-12 FL OZ (355 mL) CANS (144 FL OZ)", {12, {whole(12, U::FluidOunce), whole(355, U::Millilitre)}}},
        {"6 \xE2\x80\x93 4 OZ (113 g) CUPS", {6, {whole(4, U::Ounce), whole(113, U::Gram)}}},
        {"4 x 113 g", {4, {whole(113, U::Gram)}}},
        {"4x113g", {4, {whole(113, U::Gram)}}},
        {"4 \xC3\x97 113 g", {4, {whole(113, U::Gram)}}},
        {"6 - 1/2 PT (236 mL) CARTONS", {6, {milli(500, U::Pint), whole(236, U::Millilitre)}}},
        {"8 bars, 35 g each", {8, {whole(35, U::Gram)}}},
        {"8 BARS 1.2 OZ (35 g) EACH", {8, {milli(1'200, U::Ounce), whole(35, U::Gram)}}},
        // The amount stands first: it is that of the whole, and what follows tells how it is divided.
        {"24 OZ (6 - 4 OZ CUPS) 680 g", {1, {whole(24, U::Ounce)}}},
        {"NET WT 10 OZ (283 g) 8 BARS", {1, {whole(10, U::Ounce), whole(283, U::Gram)}}},
    };
    for (const auto& c : cases) {
        CAPTURE(c.printed);
        const auto contents = contents_of(c.printed);
        REQUIRE(contents);
        CHECK(*contents == c.contents);
    }
}

TEST_CASE("contents: what is not clear is not guessed")
{
    for (const auto* printed :
         {"", "one bag", "12", "35 g each", "6 pack 12 fl oz (355 mL)", "12 fl oz (355 mL) cans", "6 ct 5.3 oz (150 g)",
          "1,5 L", "1/3 lb", "0 oz", "12 fl ozz", "2 x 6 - 12 fl oz", "2000 - 1 g", "1.5 - 12 oz", "99999999999 g",
          "1/0 lb", "8 bars 6 bars 1 oz each", "."}) {
        CAPTURE(printed);
        CHECK_FALSE(contents_of(printed));
    }
}

TEST_CASE("contents: the figure of the system that the unit is of, and dry measure in millilitres")
{
    const auto both = contents_of("12 oz (340 g)").value();
    CHECK(core::amount_of(both, Goods::Weight, System::Customary) == whole(12, U::Ounce));
    CHECK(core::amount_of(both, Goods::Weight, System::Metric) == whole(340, U::Gram));
    CHECK_FALSE(core::amount_of(both, Goods::LiquidVolume, System::Metric));
    CHECK(core::amount_of(contents_of("340 g").value(), Goods::Weight, System::Customary) == whole(340, U::Gram));
    const auto berries = contents_of("1 DRY PINT (551 mL)").value();
    CHECK(core::amount_of(berries, Goods::DryMeasure, System::Metric) == whole(551, U::Millilitre));
    CHECK_FALSE(core::amount_of(berries, Goods::LiquidVolume, System::Metric)); // no drink
    // 16 oz are a pound exactly, by whatever unit it is counted.
    CHECK(core::exact_size(whole(16, U::Ounce), 3) == core::exact_size(whole(1, U::Pound), 3));
}
