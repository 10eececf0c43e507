// The units of trade. Sizes: NIST Handbook 44, Appendix C, from 1 in = 2.54 cm, 1 gal = 231 cubic inches, 1 dry pt =
// 33.6003125 cubic inches and 1 lb = 453.59237 g, all exact.
#include "core/figure/trade_unit.h"

#include <algorithm>

namespace core {
namespace {

using U = TradeUnit;

constexpr TradeUnitInfo table[] = {
    {U::Gram, "g", Goods::Weight, System::Metric, 10'000'000'000},
    {U::Kilogram, "kg", Goods::Weight, System::Metric, 10'000'000'000'000},
    {U::Ounce, "oz", Goods::Weight, System::Customary, 283'495'231'250},
    {U::Pound, "lb", Goods::Weight, System::Customary, 4'535'923'700'000},
    {U::Millilitre, "mL", Goods::LiquidVolume, System::Metric, 10'000'000'000},
    {U::Litre, "L", Goods::LiquidVolume, System::Metric, 10'000'000'000'000},
    {U::FluidOunce, "fl_oz", Goods::LiquidVolume, System::Customary, 295'735'295'625},
    {U::Pint, "pt", Goods::LiquidVolume, System::Customary, 4'731'764'730'000},
    {U::Quart, "qt", Goods::LiquidVolume, System::Customary, 9'463'529'460'000},
    {U::Gallon, "gal", Goods::LiquidVolume, System::Customary, 37'854'117'840'000},
    {U::DryPint, "dry_pt", Goods::DryMeasure, System::Customary, 5'506'104'713'575},
    {U::DryQuart, "dry_qt", Goods::DryMeasure, System::Customary, 11'012'209'427'150},
    {U::Piece, "each", Goods::Pieces, System::Number, 10'000'000'000},
    {U::Dozen, "dozen", Goods::Pieces, System::Number, 120'000'000'000},
    {U::SquareCentimetre, "cm2", Goods::Area, System::Metric, 10'000'000'000},
    {U::SquareDecimetre, "dm2", Goods::Area, System::Metric, 1'000'000'000'000},
    {U::SquareMetre, "m2", Goods::Area, System::Metric, 100'000'000'000'000},
    {U::SquareInch, "sq_in", Goods::Area, System::Customary, 64'516'000'000},
    {U::SquareFoot, "sq_ft", Goods::Area, System::Customary, 9'290'304'000'000},
    {U::SquareYard, "sq_yd", Goods::Area, System::Customary, 83'612'736'000'000},
};

} // namespace

std::span<const TradeUnitInfo> trade_units()
{
    return table;
}

const TradeUnitInfo& info(TradeUnit unit)
{
    return *std::ranges::find(table, unit, &TradeUnitInfo::unit); // every unit has its row; a test walks them
}

} // namespace core
