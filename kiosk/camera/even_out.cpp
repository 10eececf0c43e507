#include "kiosk/camera/even_out.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <utility>
#include <vector>

namespace kiosk {
namespace {

constexpr int degree = 3;

} // namespace

EvenOut::EvenOut(std::span<const double> centres)
{
    const auto [first, last] = std::ranges::minmax(centres);
    for (int power = 0; power <= degree; ++power) {
        std::vector<double> row;
        for (const double centre : centres)
            row.push_back(std::pow(2 * (centre - first) / (last - first) - 1, power));
        curve_.add(std::move(row));
    }
}

void EvenOut::apply(std::span<double> places, double near) const
{
    const std::vector<double> seen(places.begin(), places.end());
    std::vector<double> counted = seen;
    constexpr int rounds = 10; // each moves the curve by less
    for (int round = 0; round < rounds; ++round) {
        std::ranges::copy(curve_.part_of(counted), places.begin());
        for (std::size_t i = 0; i < places.size(); ++i)
            counted[i] = std::clamp(seen[i], places[i] - near, places[i] + near);
    }
}

} // namespace kiosk
