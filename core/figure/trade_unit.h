// Units in which goods are sold, with their exact sizes: not a label's own rounded measures, such as a cup of 240 mL.
// Sources: core/figure/trade_unit_table.cpp.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace core {

/// How goods are sold. Unlike ones are never set against each other.
enum class Goods { Weight, LiquidVolume, DryMeasure, Pieces, Area };

/// One unit of trade.
enum class TradeUnit {
    Gram,
    Kilogram,
    Ounce,
    Pound,
    Millilitre,
    Litre,
    FluidOunce,
    Pint,
    Quart,
    Gallon,
    DryPint,
    DryQuart,
    Piece,
    Dozen,
    SquareCentimetre,
    SquareDecimetre,
    SquareMetre,
    SquareInch,
    SquareFoot,
    SquareYard,
};

/// Whether a unit is of the metric system, of the customary one, or a plain number.
enum class System { Metric, Customary, Number };

/// What is fixed for one unit.
struct TradeUnitInfo {
    TradeUnit unit;
    std::string_view key; ///< "fl_oz": the name in language files and settings
    Goods goods;          ///< millilitres and litres are used for dry measure as well
    System system;
    std::int64_t size; ///< in ten thousand millionths of a gram, a millilitre, a piece or a square centimetre: exact
};

/// All units.
[[nodiscard]] std::span<const TradeUnitInfo> trade_units();

/// What is fixed for this unit.
[[nodiscard]] const TradeUnitInfo& info(TradeUnit unit);

} // namespace core
