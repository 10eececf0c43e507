// Percent Daily Value: worked out from an amount, and read by the 5/20 guide.
// Sources: 21 CFR 101.9(d)(7)(ii) and (c)(8)(iii); FDA, Interactive Nutrition Facts Label, percent Daily Value (5 and
// 20).
#pragma once

#include "core/figure/amount.h"
#include "core/figure/range.h"
#include "core/label/format.h"
#include "core/label/nutrient.h"

#include <optional>

namespace core {

/// Where a percent Daily Value of one serving stands by the published guide. A reading, not a judgement.
enum class Reading {
    Low,     ///< 5 or less
    Between, ///< above 5 and below 20
    High,    ///< 20 or more
};

/// How this nutrient's percent is rounded; potassium had a DRV, and so whole percents, before 2016.
[[nodiscard]] PercentRounding percent_rounding(Nutrient nutrient, Panel panel);

/// The percent that a label prints for this amount; nothing where the rule sets no Daily Value or no percent.
[[nodiscard]] std::optional<int> percent_daily_value(Nutrient nutrient, Content amount, Panel panel, Audience audience);

/// The 5/20 reading of a percent.
[[nodiscard]] Reading reading_of(Percent percent);

/// The one reading that every percent of a range has; nothing where they differ.
[[nodiscard]] std::optional<Reading> reading_of(Range<Percent> range);

} // namespace core
