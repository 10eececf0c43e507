// Prints an amount as a label must, and reads a printed figure backwards to the true values behind it.
// Source: 21 CFR 101.9(c) and 101.9(b)(7)(ii), (b)(8)(i); halves up as FDA's own examples print them.
#pragma once

#include "core/figure/amount.h"
#include "core/figure/figure.h"
#include "core/figure/range.h"
#include "core/label/format.h"
#include "core/label/nutrient.h"

#include <optional>

namespace core {

/// The figure that a label prints for a true amount (0 or more), by the first choice of the rule.
[[nodiscard]] Figure printed_figure(Nutrient nutrient, Content true_amount, Panel panel = Panel::Of2016);

/// The true values that this figure can stand for, every lawful choice of the maker included.
/// Nothing for a figure that the rule never prints, such as 5.5 g of fat.
[[nodiscard]] std::optional<Range<Content>> range_behind(Nutrient nutrient, const Figure& figure,
                                                         Panel panel = Panel::Of2016);

/// What stands behind "not a significant source of": from 0 up to what the rule lets a label leave out.
/// Source: 21 CFR 101.9(c)(1) to (c)(8), the sentence on that statement in each paragraph.
[[nodiscard]] Range<Content> range_behind_not_significant(Nutrient nutrient, Panel panel = Panel::Of2016);

/// The percent that a label prints: whole, or in steps of 2, 5 and 10 for vitamins and minerals. `percent` is 0 or
/// more.
[[nodiscard]] int printed_percent(PercentRounding rounding, Percent percent);

/// The true percents that a printed percent can stand for; nothing for one that the rule never prints (7 for a
/// vitamin).
[[nodiscard]] std::optional<Range<Percent>> range_behind(PercentRounding rounding, const PrintedPercent& printed);

/// The servings per container that a label prints for this many; "about" wherever the two differ.
[[nodiscard]] Count printed_servings(Count servings);

/// The servings behind "about 9". The rule prints whole numbers, and halves between 2 and 5; nothing for others.
[[nodiscard]] std::optional<Range<Count>> range_behind_about(Count printed);

/// The metric serving size that a label prints for a true one (grams or millilitres alike).
[[nodiscard]] Mass printed_serving_size(Mass true_size);
[[nodiscard]] Volume printed_serving_size(Volume true_size);

/// The true serving size behind a printed one. A finer figure than the rule asks for gets the rule's width all the
/// same: whatever finer rounding the maker used lies inside it.
[[nodiscard]] Range<Mass> range_behind_serving_size(Mass printed);
[[nodiscard]] Range<Volume> range_behind_serving_size(Volume printed);

} // namespace core
