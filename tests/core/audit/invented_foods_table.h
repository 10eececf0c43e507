// The kinds of invented foods that labels for the audit are made of; rows: invented_foods_table.cpp.
#pragma once

#include <cstdint>
#include <span>

namespace test {

/// From low to high, both included.
struct Spread {
    std::int64_t low;
    std::int64_t high;
};

/// A kind of food; contents in thousandths of its weight, sodium in milligrams of 100 g. Typical foods of such kinds:
/// common practice.
struct FoodKind {
    const char* name;
    const char* category; ///< of the release; empty: none
    bool volume;
    Spread serving; ///< tenths of a gram or millilitre
    Spread fat;
    Spread carbohydrate;
    Spread protein;
    Spread fiber;  ///< thousandths of the carbohydrate
    Spread sugars; ///< thousandths of the carbohydrate
    Spread polyol; ///< thousandths of the carbohydrate
    Spread sodium;
    bool alcohol;
};

/// All kinds.
[[nodiscard]] std::span<const FoodKind> food_kinds();

} // namespace test
