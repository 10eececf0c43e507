// The true values that a printed figure can stand for. What such ranges can and cannot do is told in
// docs/label-math.md.
#pragma once

#include "core/figure/amount.h"

#include <algorithm>
#include <optional>

namespace core {

/// low <= true value < high: never empty, never one point (an exact thing is an Amount).
/// Sums, and multiples by whole numbers from 1 on, keep that form exactly; differences and quotients do not, so there
/// are none. The ranges of one label are not independent of one another; nothing here assumes that they are.
template<class Quantity>
struct Range {
    Quantity low;
    Quantity high;
    [[nodiscard]] constexpr bool overlaps(const Range& other) const { return low < other.high && other.low < high; }
    [[nodiscard]] constexpr bool holds(Quantity value) const { return low <= value && value < high; }
    friend constexpr Range operator+(Range a, Range b) { return {a.low + b.low, a.high + b.high}; }
    friend constexpr Range operator*(Range a, std::int64_t times) { return {a.low * times, a.high * times}; }
    bool operator==(const Range&) const = default;
};

/// Every value of `left` is below every value of `right`. Equal edges are still "less": the high edge is never reached.
template<class R>
[[nodiscard]] constexpr bool surely_less(const R& left, const R& right)
{
    return left.high <= right.low;
}

/// What both ranges allow; nothing when they contradict each other.
template<class Quantity>
[[nodiscard]] constexpr std::optional<Range<Quantity>> intersection(Range<Quantity> a, Range<Quantity> b)
{
    if (!a.overlaps(b))
        return std::nullopt;
    return Range<Quantity>{std::max(a.low, b.low), std::min(a.high, b.high)};
}

} // namespace core
