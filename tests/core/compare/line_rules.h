// How each line of a label is printed, for tests that print true foods: by tests/core/brute and daily_values.csv alone.
#pragma once

#include "core/label/format.h"
#include "core/label/nutrient.h"
#include "tests/core/brute/prints.h"

#include <optional>
#include <vector>

namespace test {

/// How one nutrient is printed on labels of one panel; amounts in billionths of a gram or calorie.
struct LineRule {
    std::optional<brute::Kind> kind; ///< nothing: a vitamin or mineral, which has places
    brute::Places places{};
    std::optional<brute::Kind> percent; ///< how its percent is rounded; nothing: it has none
    std::int64_t grid = 0;              ///< a fraction of the finest step, so that halves are met
    std::int64_t most = 0;              ///< foods of the tests go up to here

    /// All that may be printed for this true amount.
    [[nodiscard]] brute::Prints amounts(std::int64_t amount, brute::Halves halves) const;
};

/// The nutrients that the tests print.
[[nodiscard]] const std::vector<core::Nutrient>& tested_nutrients();

/// Throws std::out_of_range for a nutrient that the tests do not print.
[[nodiscard]] const LineRule& line_rule(core::Nutrient nutrient, core::Panel panel);

/// Whether it is a vitamin or mineral by the rule of this panel.
[[nodiscard]] bool is_vitamin(core::Nutrient nutrient, core::Panel panel);

/// The Daily Value of daily_values.csv; 0 where there is none in grams.
[[nodiscard]] std::int64_t daily_value_of(core::Nutrient nutrient, core::Panel panel, core::Audience audience);

/// The same, and for the vitamins that were counted in international units before 2016 (A, D, E) a number that no
/// label knows: foods are printed by it, and whatever it is the answers must be right.
[[nodiscard]] std::int64_t hidden_daily_value(core::Nutrient nutrient, core::Panel panel, core::Audience audience);

/// Below this a label may say "not a significant source of".
[[nodiscard]] std::int64_t left_out_below(core::Nutrient nutrient, core::Panel panel);

} // namespace test
