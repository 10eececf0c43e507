#include "kiosk/camera/shapes.h"

#include <cmath>

namespace kiosk {
namespace {

constexpr std::array<int, 10> set_a{0x0D, 0x19, 0x13, 0x3D, 0x23, 0x31, 0x2F, 0x3B, 0x37, 0x0B};

/// A digit with two modules on each side. Between two digits of one half there is always one bar and one space (set A
/// and B end with ink and begin with none, set C the other way round), so one module beyond is known; the one behind it
/// is ink or not.
using Row = std::array<double, 11>;

int reversed(int modules)
{
    int out = 0;
    for (int i = 0; i < 7; ++i)
        out |= ((modules >> i) & 1) << (6 - i);
    return out;
}

Row row_of(int modules, bool right_half)
{
    Row row{};
    row[0] = row[10] = 0.5;
    row[1] = right_half ? 0 : 1;
    row[9] = right_half ? 1 : 0;
    for (std::size_t i = 0; i < 7; ++i)
        row[i + 2] = (modules >> (6 - i)) & 1;
    return row;
}

/// The part of an edge at 0 that is past at x, when the edge is spread.
double past(double x, double spread)
{
    return 0.5 * std::erfc(-x / (spread * std::sqrt(2.0)));
}

/// A row as the lens leaves it, with mean 0 and length 1.
std::array<float, values_in_digit> seen(const Row& row, double spread)
{
    std::array<double, values_in_digit> values{};
    double mean = 0;
    for (std::size_t i = 0; i < values.size(); ++i) {
        const double x = 2 + (static_cast<double>(i) + 0.5) / values_in_module;
        double ink = row[0];
        for (std::size_t k = 1; k < row.size(); ++k)
            ink += (row[k] - row[k - 1]) * past(x - static_cast<double>(k), spread);
        values[i] = ink;
        mean += ink / values_in_digit;
    }
    double square = 0;
    for (const double value : values)
        square += (value - mean) * (value - mean);
    std::array<float, values_in_digit> out{};
    for (std::size_t i = 0; i < values.size(); ++i)
        out[i] = static_cast<float>((values[i] - mean) / std::sqrt(square));
    return out;
}

void put(Shapes& shapes, std::size_t shape, const Row& row, double spread)
{
    const auto values = seen(row, spread);
    for (std::size_t i = 0; i < values.size(); ++i)
        shapes.at[i][shape] = values[i];
}

using AllShapes = std::array<std::array<Shapes, spreads.size()>, 2>;

AllShapes make_all()
{
    AllShapes all{};
    for (std::size_t spread = 0; spread < spreads.size(); ++spread)
        for (std::size_t digit = 0; digit < 10; ++digit) {
            const int a = set_a[digit];
            const int c = ~a & 0x7F;
            put(all[0][spread], digit, row_of(a, false), spreads[spread]);
            put(all[0][spread], digit + 10, row_of(reversed(c), false), spreads[spread]);
            put(all[1][spread], digit, row_of(c, true), spreads[spread]);
        }
    return all;
}

} // namespace

const Shapes& shapes_of(bool right_half, std::size_t spread)
{
    static const AllShapes all = make_all();
    return all[right_half ? 1 : 0][spread];
}

const std::array<float, values_in_digit>& shape_of(Guard guard, std::size_t spread)
{
    static const auto all = [] {
        constexpr std::array<Row, 3> rows{{{0, 0, 0, 0, 0, 1, 0, 1, 0, 0.5, 0.5},
                                           {0.5, 0.5, 1, 0, 1, 0, 1, 0, 1, 0.5, 0.5},
                                           {0.5, 0.5, 0, 1, 0, 1, 0, 0, 0, 0, 0}}};
        std::array<std::array<std::array<float, values_in_digit>, spreads.size()>, 3> made{};
        for (std::size_t i = 0; i < rows.size(); ++i)
            for (std::size_t k = 0; k < spreads.size(); ++k)
                made[i][k] = seen(rows[i], spreads[k]);
        return made;
    }();
    return all[static_cast<std::size_t>(guard)][spread];
}

} // namespace kiosk
