#include "kiosk/camera/orthonormal.h"

#include <cmath>
#include <cstddef>
#include <numeric>
#include <utility>

namespace kiosk {
namespace {

double product(std::span<const double> a, std::span<const double> b)
{
    return std::inner_product(a.begin(), a.end(), b.begin(), 0.0);
}

/// a += factor * b
void add_to(std::span<double> a, double factor, std::span<const double> b)
{
    for (std::size_t i = 0; i < a.size(); ++i)
        a[i] += factor * b[i];
}

} // namespace

void Orthonormal::add(std::vector<double> row)
{
    constexpr double nothing_new = 1e-9;
    for (const auto& before : rows_)
        add_to(row, -product(row, before), before);
    const double length = std::sqrt(product(row, row));
    if (length < nothing_new)
        return;
    for (double& value : row)
        value /= length;
    rows_.push_back(std::move(row));
}

std::vector<double> Orthonormal::part_of(std::span<const double> values) const
{
    std::vector<double> part(values.size(), 0);
    for (const auto& row : rows_)
        add_to(part, product(row, values), row);
    return part;
}

double Orthonormal::left_of(std::span<const double> values) const
{
    std::vector<double> left(values.begin(), values.end());
    for (const auto& row : rows_)
        add_to(left, -product(row, left), row);
    return product(left, left);
}

} // namespace kiosk
