// Household measures, so far as a whole package needs them: "1 1/2 cups" twice is "3 cups".
#pragma once

#include "core/figure/amount.h"

#include <optional>
#include <string>
#include <string_view>

namespace core {

/// The household measure of so many servings, exactly: ("1 1/2 cups", 2) is "3 cups", ("2/3 cup", 8) is "5 1/3 cups".
/// What stands in brackets is left out. Nothing when the words do not begin with a number or the unit is not a known
/// one.
[[nodiscard]] std::optional<std::string> household_times(std::string_view household, Count servings);

} // namespace core
