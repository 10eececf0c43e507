// Exact amounts: whole billionths of a unit, so that 0.5 g, 2.4 mcg and 3 kg are all integers and sums are exact.
#pragma once

#include <compare>
#include <cstdint>

namespace core {

/// An exact amount in billionths of its unit. The tag keeps grams from being added to kilocalories.
/// Holds +-9.2 thousand million units; what is read from outside is limited far below (figure.h).
template<class Dimension>
class Amount {
public:
    constexpr Amount() = default;
    static constexpr Amount from_nano(std::int64_t nano) { return Amount(nano); }
    static constexpr Amount whole(std::int64_t units) { return Amount(units * 1'000'000'000); }
    static constexpr Amount milli(std::int64_t thousandths) { return Amount(thousandths * 1'000'000); }
    static constexpr Amount micro(std::int64_t millionths) { return Amount(millionths * 1'000); }
    [[nodiscard]] constexpr std::int64_t nano() const { return nano_; }
    constexpr auto operator<=>(const Amount&) const = default;
    friend constexpr Amount operator+(Amount a, Amount b) { return Amount(a.nano_ + b.nano_); }
    friend constexpr Amount operator-(Amount a, Amount b) { return Amount(a.nano_ - b.nano_); }
    friend constexpr Amount operator*(Amount a, std::int64_t times) { return Amount(a.nano_ * times); }

private:
    constexpr explicit Amount(std::int64_t nano) : nano_(nano) {}
    std::int64_t nano_ = 0;
};

/// The weight of a serving or a package, in grams.
using Mass = Amount<struct MassTag>;
/// The volume of a serving or a package, in millilitres.
using Volume = Amount<struct VolumeTag>;
/// A number of servings.
using Count = Amount<struct CountTag>;
/// A percent Daily Value.
using Percent = Amount<struct PercentTag>;
/// How much of one nutrient: grams, or kilocalories for calories. Only amounts of the same nutrient are compared.
using Content = Amount<struct ContentTag>;

} // namespace core
