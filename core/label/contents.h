// What a package holds, read from its net quantity as printed: each amount in its own unit, also of several packages in
// one. Source: 21 CFR 101.7 (how a net quantity is declared; (s): packages of several units).
#pragma once

#include "core/figure/trade_unit.h"
#include "core/figure/wide.h"

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace core {

/// "10.8 oz": a number of a unit, as printed.
struct TradeAmount {
    std::int64_t nano; ///< the number in billionths; above 0
    TradeUnit unit;
    bool operator==(const TradeAmount&) const = default;
};

/// What a package holds.
struct Contents {
    int packages = 1;              ///< how many it has inside
    std::vector<TradeAmount> each; ///< what is in one of them; never empty, of each system at most one a kind of goods
    bool operator==(const Contents&) const = default;
};

/// Reads "12 oz (340 g)", "1 LB 4 OZ (567 g)", "1/2 gal (1.89 L)", "6 - 12 FL OZ (355 mL) CANS", "4 x 113 g",
/// "8 bars, 35 g each", "12 ct". Nothing where no amount stands there, or where it is not clear whether it is that of
/// one package or of all ("6 pack 12 fl oz").
[[nodiscard]] std::optional<Contents> contents_of(std::string_view printed);

/// The amount among them that a unit of this system asks for, else the first of such goods: both stand on the label.
/// Where a dry measure is printed, millilitres beside it are dry measure, too.
[[nodiscard]] std::optional<TradeAmount> amount_of(const Contents& contents, Goods goods, System system);

/// All that the packages hold of it: exact, in 10^-19 of a gram, millilitre, piece or square centimetre.
[[nodiscard]] Wide exact_size(TradeAmount amount, int packages);

} // namespace core
