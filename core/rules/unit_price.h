// The unit price of a package and of two side by side, exact until it is shown. Source: NIST Handbook 130, Uniform Unit
// Pricing Regulation, sections 2 (units) and 4 (rounding). The regulation does not say what happens to a tie: ties go
// up, as Regulations of Connecticut State Agencies 21a-75-4 and 230-RICR-30-25-1.5 say. Never a verdict on a food.
#pragma once

#include "core/figure/money.h"
#include "core/label/contents.h"
#include "core/label/label.h"
#include "core/rules/price_unit.h"

#include <array>
#include <compare>
#include <cstdint>
#include <optional>
#include <string>

namespace core {

/// A price as a shelf shows it.
struct ShownPrice {
    std::int64_t tenths = 0;  ///< tenths of a cent, rounded
    bool with_tenth = false;  ///< the tenth is shown; else the price is in whole cents
    bool rounds_to_0 = false; ///< it is something, and less than what is shown
    bool operator==(const ShownPrice&) const = default;
};

/// Section 4: below a dollar to the tenth or the whole cent as picked, from a dollar on to the whole cent. `numerator`
/// / `denominator` is the exact price in cents.
[[nodiscard]] ShownPrice shown_price(Wide numerator, Wide denominator, PriceRounding rounding);

/// What one package costs for a unit of its goods.
struct UnitPrice {
    Money price;        ///< of the whole package
    TradeAmount amount; ///< the printed amount that it was worked out from
    int packages = 1;   ///< inside the whole
    PriceUnit unit;
    ShownPrice shown;
    bool operator==(const UnitPrice&) const = default;
};

/// The unit price in this unit, one allowed for such goods; nothing when the package holds no such goods.
[[nodiscard]] std::optional<UnitPrice> unit_price(Money price, const Contents& contents, Goods goods, PriceUnit unit,
                                                  PriceRounding rounding);

/// Exactly which costs less for the same unit, multiplied crosswise. Only for the same kind of goods.
[[nodiscard]] std::strong_ordering cheaper_first(const UnitPrice& left, const UnitPrice& right);

/// What one serving costs. Nothing when servings vary or are not printed.
struct ServingPrice {
    ShownPrice shown;
    bool about = false; ///< the label prints "about" so many servings
    bool operator==(const ServingPrice&) const = default;
};
[[nodiscard]] std::optional<ServingPrice> serving_price(Money price, const ServingsPerContainer& servings,
                                                        PriceRounding rounding);

/// Why two unit prices do not stand side by side. Each has its own sentence in ui/words/.
enum class PriceWhy {
    Comparable,
    PriceMissing,       ///< one side has no price typed
    NetQuantityMissing, ///< the net quantity of one side is not recorded
    NetQuantityUnclear, ///< what is recorded is no amount that can be counted with
    UnlikeGoods,        ///< weight against volume
};

/// One side of two prices.
struct PricedSide {
    std::optional<Money> price;
    std::optional<UnitPrice> unit; ///< also where the other side has none
    std::optional<ServingPrice> serving;
    PriceWhy why = PriceWhy::PriceMissing; ///< why this side has no unit price
    bool operator==(const PricedSide&) const = default;
};

/// Two prices side by side.
struct PricePair {
    std::array<PricedSide, 2> sides;
    PriceWhy why = PriceWhy::PriceMissing;
    std::optional<std::strong_ordering> order; ///< left against right; nothing where `why` is not Comparable
    bool operator==(const PricePair&) const = default;
};

/// Two labels with the prices typed for them; both in one unit, where they hold the same kind of goods.
[[nodiscard]] PricePair price_pair(const Label& left, std::optional<Money> left_price, const Label& right,
                                   std::optional<Money> right_price, const PriceChoices& choices);

} // namespace core
