// The units allowed for a unit price: NIST Handbook 130, Uniform Unit Pricing Regulation, section 2. "Count: the price
// of one unit or of several": a dozen and a hundred are the usual several (common practice).
#include "core/rules/price_unit.h"

#include <algorithm>

namespace core {
namespace {

using U = TradeUnit;

constexpr AllowedUnit table[] = {
    {Goods::Weight, "oz", {U::Ounce}},
    {Goods::Weight, "lb", {U::Pound}},
    {Goods::Weight, "100_g", {U::Gram, 100}},
    {Goods::Weight, "kg", {U::Kilogram}},
    {Goods::LiquidVolume, "fl_oz", {U::FluidOunce}},
    {Goods::LiquidVolume, "pt", {U::Pint}},
    {Goods::LiquidVolume, "qt", {U::Quart}},
    {Goods::LiquidVolume, "gal", {U::Gallon}},
    {Goods::LiquidVolume, "100_mL", {U::Millilitre, 100}},
    {Goods::LiquidVolume, "L", {U::Litre}},
    {Goods::DryMeasure, "dry_pt", {U::DryPint}},
    {Goods::DryMeasure, "dry_qt", {U::DryQuart}},
    {Goods::DryMeasure, "100_mL", {U::Millilitre, 100}},
    {Goods::DryMeasure, "L", {U::Litre}},
    {Goods::Pieces, "each", {U::Piece}},
    {Goods::Pieces, "dozen", {U::Dozen}},
    {Goods::Pieces, "100_count", {U::Piece, 100}},
    {Goods::Area, "sq_ft", {U::SquareFoot}},
    {Goods::Area, "50_sq_ft", {U::SquareFoot, 50}},
    {Goods::Area, "100_sq_ft", {U::SquareFoot, 100}},
    {Goods::Area, "sq_in", {U::SquareInch}},
    {Goods::Area, "sq_yd", {U::SquareYard}},
    {Goods::Area, "cm2", {U::SquareCentimetre}},
    {Goods::Area, "dm2", {U::SquareDecimetre}},
    {Goods::Area, "m2", {U::SquareMetre}},
};

} // namespace

std::span<const AllowedUnit> allowed_units()
{
    return table;
}

std::optional<PriceUnit> allowed_unit(Goods goods, std::string_view key)
{
    const auto* const row =
        std::ranges::find_if(table, [&](const AllowedUnit& one) { return one.goods == goods && one.key == key; });
    return row == std::ranges::end(table) ? std::nullopt : std::optional(row->unit);
}

PriceUnit unit_for(Goods goods, const PriceChoices& choices)
{
    switch (goods) {
    case Goods::Weight:
        return choices.weight;
    case Goods::LiquidVolume:
        return choices.liquid;
    case Goods::DryMeasure:
        return choices.dry;
    case Goods::Pieces:
        return choices.count;
    case Goods::Area:
        break;
    }
    return {TradeUnit::SquareFoot};
}

} // namespace core
