// Prints an amount as a label must, and reads a printed figure backwards to the true values behind it.
// Source: 21 CFR 101.9(c) and 101.9(b)(7)(ii), (b)(8)(i); halves up as FDA's own examples print them.
#pragma once

#include "core/figure/amount.h"
#include "core/figure/figure.h"
#include "core/figure/range.h"
#include "core/label/nutrient.h"

#include <optional>
#include <span>
#include <string_view>

namespace core {

/// "To the nearest `step`" from `from` on, up to the next band.
struct Band {
    std::int64_t from;
    std::int64_t step;
};

/// How one family of figures is rounded; amounts in billionths of the base unit.
struct RoundingRule {
    Rounding rounding;
    std::string_view citation;
    std::int64_t zero_below;      ///< below this the label prints 0 ...
    bool zero_is_a_must;          ///< ... always ("shall"), or may do so and may also follow the first band
    std::int64_t less_than;       ///< the amount of "less than ...", 0 if the rule knows none
    std::int64_t less_than_from;  ///< from here on "less than ..." may stand
    bool less_than_holds_its_end; ///< whether the amount itself may still print as "less than" it (cholesterol: 2 to 5 mg)
    std::span<const Band> bands;  ///< rising
};

/// The rule of a family that rounds in bands; nothing for vitamins and minerals, which have a place each.
[[nodiscard]] const RoundingRule* rounding_rule(Rounding rounding);

/// The figure that a label prints for a true amount (0 or more), by the first choice of the rule.
[[nodiscard]] Figure printed_figure(Nutrient nutrient, Content true_amount);

/// The true values that this figure can stand for, every lawful choice of the maker included.
/// Nothing for a figure that the rule never prints, such as 5.5 g of fat.
[[nodiscard]] std::optional<Range<Content>> range_behind(Nutrient nutrient, const Figure& figure);

/// The percent that a label prints: whole, or in steps of 2, 5 and 10 for vitamins and minerals. `percent` is 0 or more.
[[nodiscard]] int printed_percent(PercentRounding rounding, Percent percent);

/// The true percents that a printed percent can stand for; nothing for one that the rule never prints (7 for a vitamin).
[[nodiscard]] std::optional<Range<Percent>> range_behind(PercentRounding rounding, const PrintedPercent& printed);

/// The servings per container that a label prints for this many; "about" wherever the two differ.
[[nodiscard]] Count printed_servings(Count servings);

/// The servings behind "about 9". The rule prints whole numbers, and halves between 2 and 5; nothing for others.
[[nodiscard]] std::optional<Range<Count>> range_behind_about(Count printed);

/// The metric serving size that a label prints for a true one (grams or millilitres alike).
template<class Metric>
[[nodiscard]] Metric printed_serving_size(Metric true_size);

/// The true serving size behind a printed one. A finer figure than the rule asks for gets the rule's width all the same.
template<class Metric>
[[nodiscard]] Range<Metric> range_behind_serving_size(Metric printed);

} // namespace core
