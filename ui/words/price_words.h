// Prices in words: what a package costs for a unit and for a serving, and which costs less. Never which is better.
#pragma once

#include "core/rules/unit_price.h"
#include "ui/words/language.h"
#include "ui/words/pair_words.h"

#include <string>

namespace ui {

/// "$3.99", "$1,234.50".
[[nodiscard]] std::string money_words(core::Money money);

/// "33.3 cents", "$2.50", "less than 0.1 cents".
[[nodiscard]] std::string shown_price_words(const core::ShownPrice& price, const Language& language);

/// "12 oz", "6 packs of 12 fl oz", "12 pieces": the printed amount that a price was worked out from.
[[nodiscard]] std::string trade_amount_words(core::TradeAmount amount, int packages, const Language& language);

/// "ounce", "100 g", "dozen": what stands behind "per".
[[nodiscard]] std::string price_unit_words(core::PriceUnit unit, const Language& language);

/// Both prices, and which costs less for the same amount or why that is not said. Empty sentences while no price is
/// typed.
[[nodiscard]] Section price_section(const core::PricePair& pair, const Language& language);

} // namespace ui
