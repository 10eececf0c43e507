#include "core/rules/price_unit.h"

#include <doctest/doctest.h>

#include <set>

using core::Goods;
using U = core::TradeUnit;

TEST_CASE("price units: section 2 of the regulation, kind by kind")
{
    // NIST Handbook 130, Uniform Unit Pricing Regulation, section 2.
    for (const auto* key : {"kg", "100_g", "lb", "oz"})
        CHECK(core::allowed_unit(Goods::Weight, key));
    for (const auto* key : {"L", "100_mL", "gal", "qt", "pt", "fl_oz"})
        CHECK(core::allowed_unit(Goods::LiquidVolume, key));
    for (const auto* key : {"L", "100_mL", "dry_qt", "dry_pt"})
        CHECK(core::allowed_unit(Goods::DryMeasure, key));
    for (const auto* key : {"m2", "dm2", "cm2", "sq_yd", "sq_ft", "sq_in"})
        CHECK(core::allowed_unit(Goods::Area, key));
    CHECK(core::allowed_unit(Goods::Pieces, "each") == core::PriceUnit{U::Piece});
    CHECK_FALSE(core::allowed_unit(Goods::Weight, "fl_oz"));
    CHECK_FALSE(core::allowed_unit(Goods::DryMeasure, "qt")); // a liquid quart is smaller than a dry one
    CHECK_FALSE(core::allowed_unit(Goods::Weight, "g"));
    CHECK_FALSE(core::allowed_unit(Goods::Weight, ""));
}

TEST_CASE("price units: each is of its own kind of goods, and no key stands twice in one kind")
{
    std::set<std::pair<Goods, std::string_view>> seen;
    for (const auto& one : core::allowed_units()) {
        CAPTURE(one.key);
        CHECK(seen.insert({one.goods, one.key}).second);
        const auto goods = core::info(one.unit.unit).goods;
        const bool litres_of_dry = one.goods == Goods::DryMeasure && goods == Goods::LiquidVolume;
        CHECK((goods == one.goods || litres_of_dry));
        CHECK(one.unit.times > 0);
    }
}

TEST_CASE("price units: the unit picked goes with the goods, and every default is allowed")
{
    core::PriceChoices choices;
    choices.weight = {U::Gram, 100};
    CHECK(core::unit_for(Goods::Weight, choices) == core::PriceUnit{U::Gram, 100});
    CHECK(core::unit_for(Goods::LiquidVolume, choices) == core::PriceUnit{U::FluidOunce});
    for (const auto goods : {Goods::Weight, Goods::LiquidVolume, Goods::DryMeasure, Goods::Pieces, Goods::Area}) {
        bool allowed = false;
        for (const auto& one : core::allowed_units())
            allowed = allowed || (one.goods == goods && one.unit == core::unit_for(goods, {}));
        CHECK(allowed);
    }
}
