#include "kiosk/camera/even_out.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace kiosk {
namespace {

constexpr int degree = 3;

double product(std::span<const double> a, std::span<const double> b)
{
    return std::inner_product(a.begin(), a.end(), b.begin(), 0.0);
}

/// a += factor * b
void add(std::span<double> a, double factor, std::span<const double> b)
{
    for (std::size_t i = 0; i < a.size(); ++i)
        a[i] += factor * b[i];
}

} // namespace

EvenOut::EvenOut(std::span<const double> centres)
{
    const auto [first, last] = std::ranges::minmax(centres);
    for (int power = 0; power <= degree; ++power) {
        std::vector<double> row;
        for (const double centre : centres)
            row.push_back(std::pow(2 * (centre - first) / (last - first) - 1, power));
        for (const auto& before : basis_)
            add(row, -product(row, before), before);
        const double length = std::sqrt(product(row, row));
        for (double& value : row)
            value /= length;
        basis_.push_back(std::move(row));
    }
}

void EvenOut::apply(std::span<double> places, double near) const
{
    const std::vector<double> seen(places.begin(), places.end());
    std::vector<double> counted = seen;
    constexpr int rounds = 10; // each moves the curve by less
    for (int round = 0; round < rounds; ++round) {
        std::ranges::fill(places, 0.0);
        for (const auto& row : basis_)
            add(places, product(row, counted), row);
        for (std::size_t i = 0; i < places.size(); ++i)
            counted[i] = std::clamp(seen[i], places[i] - near, places[i] + near);
    }
}

} // namespace kiosk
