// The units that a unit price may be given in, by kind of goods, and what the leader picked among them.
// Source: NIST Handbook 130, Uniform Unit Pricing Regulation, section 2 (units) and section 4 (rounding).
#pragma once

#include "core/figure/trade_unit.h"

#include <optional>
#include <span>
#include <string_view>

namespace core {

/// So many of a unit of trade: "100 g", "oz", "dozen".
struct PriceUnit {
    TradeUnit unit;
    int times = 1;
    bool operator==(const PriceUnit&) const = default;
};

/// A unit price below a dollar is told to a tenth of a cent or to a whole cent: a store picks one and keeps to it.
enum class PriceRounding { TenthCent, WholeCent };

/// What the leader picked. The defaults are the units that most shelves show (common practice).
struct PriceChoices {
    PriceRounding rounding = PriceRounding::TenthCent;
    PriceUnit weight{TradeUnit::Ounce};
    PriceUnit liquid{TradeUnit::FluidOunce};
    PriceUnit dry{TradeUnit::DryPint};
    PriceUnit count{TradeUnit::Piece};
    bool operator==(const PriceChoices&) const = default;
};

/// One unit that the rule allows.
struct AllowedUnit {
    Goods goods;
    std::string_view key; ///< "100_g", "fl_oz", "each": the name in settings
    PriceUnit unit;
};

/// All units that the rule allows, of all kinds of goods.
[[nodiscard]] std::span<const AllowedUnit> allowed_units();

/// The unit with this key among those allowed for such goods.
[[nodiscard]] std::optional<PriceUnit> allowed_unit(Goods goods, std::string_view key);

/// The unit picked for such goods; square feet for area, which no food is sold by.
[[nodiscard]] PriceUnit unit_for(Goods goods, const PriceChoices& choices);

} // namespace core
