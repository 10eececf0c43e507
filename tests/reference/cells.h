// Turns cells of the reference tables into values of core; a cell that it does not understand throws.
#pragma once

#include "core/figure/amount.h"
#include "core/label/format.h"
#include "core/label/nutrient.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace test {

/// "0.25" in billionths: 250000000.
[[nodiscard]] std::int64_t nano_of_cell(std::string_view decimal);

/// An amount in the unit that its row names: "g", "mg", "mcg", "mcg RAE" ..., or "kcal".
[[nodiscard]] core::Content content_of_cell(std::string_view decimal, std::string_view unit);

/// A nutrient and the panel whose rule it is: "potassium_pre2016" is potassium on an older label.
struct RuleOf {
    core::Nutrient nutrient;
    core::Panel panel;
};

/// The nutrient that a row is about; nothing for lines that no label of ours holds (calories from fat, other
/// carbohydrate).
[[nodiscard]] std::optional<RuleOf> rule_of(std::string_view name);

/// A percent's rounding by the name of its row: "vitamin_mineral_percent_dv", "drv_percent_dv", "sodium_percent_dv".
[[nodiscard]] std::optional<core::PercentRounding> percent_rule_of(std::string_view name);

/// "2016" or "pre2016".
[[nodiscard]] core::Panel panel_of(std::string_view label);

} // namespace test
