// The rows behind core/figure/daily_values.h, apart from the look-up so that they hold no logic.
#pragma once

#include "core/label/format.h"
#include "core/label/nutrient.h"

#include <cstdint>
#include <span>

namespace core {

/// One Daily Value, in billionths of a gram.
struct DailyValueRow {
    Nutrient nutrient;
    Panel panel;
    Audience audience;
    std::int64_t nano;
};

/// All rows.
[[nodiscard]] std::span<const DailyValueRow> daily_value_rows();

} // namespace core
