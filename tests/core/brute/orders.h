// Which way round two foods can stand, by trying every food of a grid: a second implementation of the comparison that
// includes nothing of the program.
#pragma once

#include "tests/core/brute/prints.h"

#include <cstdint>
#include <map>
#include <vector>

namespace brute {

/// Two lines of which one is part of the other, and how they are printed.
struct Grid {
    Kind part_kind;
    Kind whole_kind;
    std::int64_t part_daily_value;  ///< 0: its percent is not printed
    std::int64_t whole_daily_value; ///< 0: its percent is not printed
    std::vector<std::int64_t> amounts;
    std::vector<std::int64_t> sizes;
    std::vector<std::int64_t> servings;
    std::int64_t net_place; ///< the net quantity is right to one of this place; 0: none is printed
    std::int64_t net;       ///< and this is printed
};

/// What is printed of one line; a percent below 0 is not printed, nor an amount below 0.
struct LinePrint {
    Print amount{-1};
    Print percent{-1};
    auto operator<=>(const LinePrint&) const = default;
};

/// What a label prints.
struct LabelPrint {
    LinePrint part;
    LinePrint whole;
    std::int64_t size = 0;
    std::int64_t servings = 0;
    auto operator<=>(const LabelPrint&) const = default;
};

/// One food of a grid.
struct Food {
    std::int64_t part;
    std::int64_t whole;
    std::int64_t size;
    std::int64_t servings;
};

/// What is compared.
enum class Of { Part, Whole };
/// In how much of each food.
enum class In { Serving, Package, Hundred };

/// The foods that print one label, by the least and the most of everything.
struct Ends {
    Food least[2][3];
    Food most[2][3];
    std::int64_t foods = 0;
    bool at_edge = false; ///< one of them has the highest amount of the grid: there may be more outside
};

/// All labels of a grid. Every food is printed in every lawful way: halves up, but either way for a percent that is
/// counted from a printed amount.
[[nodiscard]] std::map<LabelPrint, Ends> labels_of(const Grid& grid);

/// Which orders are possible.
struct Orders {
    bool less = false;
    bool equal = false;
    bool more = false;
};

/// By the ends of both. `equal` is whether the two can hold the same.
[[nodiscard]] Orders orders(const Ends& left, const Ends& right, Of of, In in);

/// Where an amount may begin or end to print as something: multiples of `step` and `percent_step`, and the billionth
/// below each, up to `most`.
[[nodiscard]] std::vector<std::int64_t> edges(std::int64_t step, std::int64_t percent_step, std::int64_t most);

} // namespace brute
