// What one label says of a nutrient on one basis: the figure to show, and the exact range for crosswise comparison.
#pragma once

#include "core/compare/basis.h"
#include "core/compare/comparison.h"
#include "core/figure/wide.h"

#include <optional>

namespace core {

/// One side of a row before the two are held against each other.
struct Measured {
    Shown shown;
    std::optional<Range<Content>> content; ///< of what the label prints; of a nominal Daily Value it is a share only
    std::optional<WideRange> range;        ///< content times factor; nothing when not printed or off the rule
    Why why = Why::Comparable;             ///< why there is no range; Comparable: the amount is simply not printed
    bool multiplied = true;                ///< false where the label itself prints the figure for this basis
};

/// How the content of one serving becomes the content of the basis: low x low_over / low_under to high x ... /
/// high_under, all in billionths.
struct Scale {
    std::int64_t low_over;
    std::int64_t low_under;
    std::int64_t high_over;
    std::int64_t high_under;
};

/// Whether a column prints or names a nutrient at all.
[[nodiscard]] bool prints(const Column& column, Nutrient nutrient);

/// Servings per container as a scale; nothing for varied, not printed or off the rule.
[[nodiscard]] std::optional<Scale> package_scale(const ServingsPerContainer& servings);

/// From one serving to 100 g or 100 mL: the serving size is a rounded figure, so the two ends differ.
[[nodiscard]] Scale hundred_scale(const Measure& serving);

/// One serving, as printed.
[[nodiscard]] Measured measured_serving(const Label& label, Nutrient nutrient, std::optional<Content> nominal);

/// The whole package: the printed column "per container" where there is one, else the taught product.
[[nodiscard]] Measured measured_package(const Label& label, Nutrient nutrient, std::optional<Content> nominal);

/// 100 g or 100 mL to show; its exact range is per serving, times the other side's serving size, for crosswise
/// comparison.
[[nodiscard]] Measured measured_hundred(const Label& label, Nutrient nutrient, const Measure& other_serving,
                                        std::optional<Content> nominal);

} // namespace core
