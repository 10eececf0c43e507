// Products of two amounts in 128 bits: comparisons multiply crosswise and never divide, so nothing is rounded away.
#pragma once

#include "core/figure/amount.h"
#include "core/figure/range.h"

#include <cstdint>
#include <limits>

namespace core {

/// 128-bit integers: a product of two amounts (below 2^63 each) always fits.
__extension__ using Wide = __int128;

/// A range of products, in billionths times billionths of the two units.
struct WideRange {
    Wide low;
    Wide high;
    [[nodiscard]] constexpr bool overlaps(const WideRange& other) const { return low < other.high && other.low < high; }
    bool operator==(const WideRange&) const = default;
};

/// The product of two ranges that hold no negative value: [a,b) x [c,d) is [ac,bd) exactly.
template<class A, class B>
[[nodiscard]] constexpr WideRange product(Range<A> a, Range<B> b)
{
    return {Wide{a.low.nano()} * b.low.nano(), Wide{a.high.nano()} * b.high.nano()};
}

/// The product of a range and an exact amount above 0.
template<class A, class B>
[[nodiscard]] constexpr WideRange product(Range<A> a, Amount<B> exact)
{
    return {Wide{a.low.nano()} * exact.nano(), Wide{a.high.nano()} * exact.nano()};
}

/// Cut to what 64 bits hold: only a hostile label gets there, and "very much" is then as true as can be.
[[nodiscard]] constexpr std::int64_t narrowed(Wide value)
{
    constexpr Wide most = std::numeric_limits<std::int64_t>::max();
    return static_cast<std::int64_t>(value < most ? value : most);
}

/// numerator / denominator, rounded down (both at least 0, denominator above 0).
[[nodiscard]] constexpr std::int64_t rounded_down(Wide numerator, Wide denominator)
{
    return narrowed(numerator / denominator);
}

/// numerator / denominator, rounded up (both at least 0, denominator above 0).
[[nodiscard]] constexpr std::int64_t rounded_up(Wide numerator, Wide denominator)
{
    return narrowed((numerator + denominator - 1) / denominator);
}

/// numerator / denominator to the nearest, halves up (both at least 0, denominator above 0).
[[nodiscard]] constexpr std::int64_t rounded_nearest(Wide numerator, Wide denominator)
{
    return narrowed((2 * numerator + denominator) / (2 * denominator));
}

} // namespace core
