// Estimated calories of a day by age, sex and activity: a table of ranges to look at, never asked for and never one
// person's. Source: Dietary Guidelines for Americans, 2020-2025, Appendix 2, Tables A2-1 (12 through 23 months) and
// A2-2 (age 2 and older), for people who keep their weight.
#pragma once

#include <span>
#include <string_view>

namespace core {

/// The edition that the table is from; a later one may say otherwise, so it stands beside every figure.
inline constexpr std::string_view day_edition = "Dietary Guidelines for Americans, 2020-2025";

/// As the tables divide people.
enum class Sex { Male, Female };

/// "and older".
inline constexpr int no_end = 1000;

/// One row of the tables; kilocalories a day.
struct DayNeed {
    Sex sex;
    bool in_months; ///< the ages are months; then the table has one figure for all
    int from;
    int to; ///< included
    int sedentary;
    int moderate; ///< moderately active
    int active;
};

/// All rows.
[[nodiscard]] std::span<const DayNeed> day_needs();

/// People of an age together, as the screen shows them.
struct DayGroup {
    bool in_months;
    int from;
    int to;      ///< included
    int low[2];  ///< the lowest figure of the tables for these ages; by Sex
    int high[2]; ///< the highest
};

/// The groups, from young to old; their figures are looked up in the tables.
[[nodiscard]] std::span<const DayGroup> day_groups();

} // namespace core
