// Household measures: "2/3 cup (55 g)", "1 1/2 cups", "3 cookies (32 g)", "about 12 chips", "1/4 package".
// Sources: 21 CFR 101.9(b)(5) (measures and their sizes), (b)(2) and (b)(7) (the measure defines the serving and the
// weight behind it follows, so a measure without "about" is exact).
#pragma once

#include "core/figure/amount.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace core {

/// An exact fraction above 0: 2/3.
struct Ratio {
    std::int64_t over = 1;
    std::int64_t under = 1;
    bool operator==(const Ratio&) const = default;
};

/// A serving in household words, understood.
struct Household {
    enum class Unit {
        Cup,        ///< 240 mL
        Tablespoon, ///< 15 mL
        Teaspoon,   ///< 5 mL
        FluidOunce, ///< 30 mL
        Ounce,      ///< a weight: nothing that a kitchen measures
        Piece,      ///< cookies, slices, chips: see `noun`
        Package,    ///< a share of the package: "1/4 package", "1 can"
    };
    Unit unit = Unit::Piece;
    Ratio count;        ///< how many: 2/3, 12
    bool about = false; ///< "about 12 chips"
    std::string noun;   ///< of pieces, in the singular: "cookie"; of measures what stands behind them: "dry"
    bool operator==(const Household&) const = default;
};

/// Reads the words; what stands in brackets is left out. Nothing where they do not begin with a number above 0 (or
/// "about" and one), or name nothing behind it.
[[nodiscard]] std::optional<Household> parse_household(std::string_view household);

/// Millilitres of one such measure on a label, 21 CFR 101.9(b)(5)(viii); 0 for what is no measure of volume.
[[nodiscard]] std::int64_t label_millilitres(Household::Unit unit);

/// The household measure of so many servings, exactly: ("1 1/2 cups", 2) is "3 cups", ("2/3 cup", 8) is "5 1/3 cups".
/// What stands in brackets is left out. Nothing when the words do not begin with a number or the unit is not a known
/// one.
[[nodiscard]] std::optional<std::string> household_times(std::string_view household, Count servings);

/// "1 1/2", "2/3", "12"; nothing below eighths, which nobody measures.
[[nodiscard]] std::optional<std::string> ratio_text(Ratio amount);

} // namespace core
