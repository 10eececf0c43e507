// From one serving to the amount of a basis: as it is taught, and all that the sizes of the label allow.
#pragma once

#include "core/compare/basis.h"
#include "core/figure/range.h"
#include "core/label/sizes.h"

#include <cstdint>
#include <optional>

namespace core {

/// How the content of one serving becomes the content of the basis: from low x low_over / low_under to
/// high x high_over / high_under. All above 0 (low_over may be 0 for a hostile label).
struct Scale {
    std::int64_t low_over = 1;
    std::int64_t low_under = 1;
    std::int64_t high_over = 1;
    std::int64_t high_under = 1;
    bool operator==(const Scale&) const = default;
};

/// The factor of one side.
struct Factor {
    Ratio taught; ///< by the sizes as they are printed
    Scale range;  ///< by all that stands behind them
    bool operator==(const Factor&) const = default;
};

/// The factor of one label on a basis; `measure` is common_measure for Basis::SameMeasure. Nothing where the label
/// cannot be brought to it (comparable_on says why).
[[nodiscard]] std::optional<Factor> factor_of(Basis basis, const Label& label, const Sizes& sizes,
                                              const MyAmount& amount, const std::optional<Household>& measure);

/// Whether, whatever the true contents and sizes are, the left has less: crosswise, nothing is divided. Equal edges are
/// still "less": the high edge is never reached (unless a maker rounds a half down; docs/label-math.md). A hostile
/// label whose products do not fit 128 bits is never surely anything.
[[nodiscard]] bool surely_less(Range<Content> left, const Scale& left_scale, Range<Content> right,
                               const Scale& right_scale);

} // namespace core
