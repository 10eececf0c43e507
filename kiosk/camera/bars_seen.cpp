#include "kiosk/camera/bars_seen.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <utility>
#include <vector>

namespace kiosk {
namespace {

/// The picture is judged square by square, of so many pixels a side: small ones for small bars, large ones for bars of
/// which a small one holds hardly two. All limits below are common practice, tried on drawn bars of 1.5 to 6 pixels.
constexpr int small_side = 16;

/// What the slopes between ink and paper are like in one square.
struct Square {
    bool striped = false;
    float angle = 0; ///< across the stripes, from 0 to pi
    float sharp = 0;
    bool taken = false;
};

/// Sums over the slopes of a square, along its two diagonals: these share no pixel, so grain has no direction.
struct Slopes {
    std::int64_t aa = 0, bb = 0, ab = 0;
    std::int64_t a = 0, b = 0;           ///< with their signs: they cancel where dark and light alternate
    std::int64_t size_a = 0, size_b = 0; ///< without
    int steepest = 0;                    ///< from a pixel to the next
    int low = 255, high = 0;
    int count = 0;

    void add(int a_slope, int b_slope, int here)
    {
        aa += a_slope * a_slope;
        bb += b_slope * b_slope;
        ab += a_slope * b_slope;
        a += a_slope;
        b += b_slope;
        size_a += std::abs(a_slope);
        size_b += std::abs(b_slope);
        low = std::min(low, here);
        high = std::max(high, here);
        ++count;
    }
    void add(const Slopes& other)
    {
        aa += other.aa;
        bb += other.bb;
        ab += other.ab;
        a += other.a;
        b += other.b;
        size_a += other.size_a;
        size_b += other.size_b;
        steepest = std::max(steepest, other.steepest);
        low = std::min(low, other.low);
        high = std::max(high, other.high);
        count += other.count;
    }
};

Slopes slopes_of(const GreyView& picture, int left, int top)
{
    Slopes sum;
    for (int y = top; y < top + small_side; ++y) {
        const std::uint8_t* row = picture.pixels + static_cast<std::ptrdiff_t>(picture.stride) * y;
        const std::uint8_t* below = row + picture.stride;
        for (int x = left; x < left + small_side; ++x) {
            const int here = row[x];
            sum.add(below[x + 1] - here, row[x + 1] - below[x], here);
            sum.steepest = std::max({sum.steepest, std::abs(row[x + 1] - here), std::abs(below[x] - here)});
        }
    }
    return sum;
}

Square judged(const Slopes& s)
{
    constexpr int least_range = 40;          // grey levels between ink and paper
    constexpr std::int64_t least_steep = 60; // mean square of the slopes
    constexpr float least_alike = 0.6F;      // 1: all slopes point the same way; letters have some 0.3
    constexpr float eighth_turn = 0.785398F;
    const std::int64_t all = s.aa + s.bb;
    Square square;
    if (s.high - s.low < least_range || all < least_steep * s.count)
        return square;
    const auto across = static_cast<float>(s.aa - s.bb);
    const auto slant = static_cast<float>(2 * s.ab);
    const float alike = std::sqrt(across * across + slant * slant) / static_cast<float>(all);
    // One edge has slopes all up or all down; stripes have as many of each.
    const bool alternates = 2 * (std::abs(s.a) + std::abs(s.b)) < s.size_a + s.size_b;
    square.striped = alike >= least_alike && alternates;
    square.angle = eighth_turn - 0.5F * std::atan2(slant, across); // diagonals are an eighth of a turn off
    square.sharp = static_cast<float>(s.steepest) / static_cast<float>(s.high - s.low);
    return square;
}

/// The slopes of all squares of one size, row by row.
struct Grid {
    int columns = 0;
    int rows = 0;
    int side = 0;
    std::vector<Slopes> slopes;
};

Grid small_grid(const GreyView& picture)
{
    Grid grid{(picture.width - 1) / small_side, (picture.height - 1) / small_side, small_side, {}};
    for (int y = 0; y < grid.rows; ++y)
        for (int x = 0; x < grid.columns; ++x)
            grid.slopes.push_back(slopes_of(picture, x * small_side, y * small_side));
    return grid;
}

/// Four small squares make a large one.
Grid large_grid(const Grid& small)
{
    Grid grid{small.columns / 2, small.rows / 2, 2 * small.side, {}};
    for (int y = 0; y < grid.rows; ++y)
        for (int x = 0; x < grid.columns; ++x) {
            Slopes sum;
            for (const int place : {2 * y * small.columns + 2 * x, (2 * y + 1) * small.columns + 2 * x})
                for (const int beside : {0, 1})
                    sum.add(small.slopes[static_cast<std::size_t>(place + beside)]);
            grid.slopes.push_back(sum);
        }
    return grid;
}

/// All squares of a picture, and the groups that striped ones make.
class Squares {
public:
    explicit Squares(const Grid& grid) : columns_(grid.columns), rows_(grid.rows)
    {
        for (const Slopes& slopes : grid.slopes)
            squares_.push_back(judged(slopes));
    }

    /// The places of the largest group of neighbours whose stripes run the same way.
    std::vector<int> largest_group()
    {
        std::vector<int> largest;
        for (int start = 0; start < columns_ * rows_; ++start) {
            auto group = group_from(start);
            if (group.size() > largest.size())
                largest = std::move(group);
        }
        return largest;
    }
    [[nodiscard]] const Square& at(int place) const { return squares_[static_cast<std::size_t>(place)]; }
    [[nodiscard]] int columns() const { return columns_; }

private:
    std::vector<int> group_from(int start)
    {
        std::vector<int> group;
        take(start, group);
        for (std::size_t i = 0; i < group.size(); ++i) {
            const int place = group[i];
            const int x = place % columns_;
            for (const auto& [there, is] : {std::pair{place - 1, x > 0}, std::pair{place + 1, x + 1 < columns_},
                                            std::pair{place - columns_, place >= columns_},
                                            std::pair{place + columns_, place + columns_ < columns_ * rows_}})
                if (is && alike(at(place), at(there)))
                    take(there, group);
        }
        return group;
    }
    void take(int place, std::vector<int>& group)
    {
        Square& square = squares_[static_cast<std::size_t>(place)];
        if (!square.striped || square.taken)
            return;
        square.taken = true;
        group.push_back(place);
    }
    static bool alike(const Square& a, const Square& b)
    {
        constexpr float most_apart = 0.35F; // 20 degrees
        return std::abs(std::sin(a.angle - b.angle)) < most_apart;
    }

    int columns_;
    int rows_;
    std::vector<Square> squares_;
};

/// What squares of one size show.
struct Measure {
    BarsSeen seen;
    std::size_t pixels = 0; ///< how many are covered with stripes
};

Measure measured(const Grid& grid, int longer_edge)
{
    constexpr std::size_t least_squares = 3;
    const int side = grid.side;
    Squares squares(grid);
    const auto group = squares.largest_group();
    if (group.size() < least_squares)
        return {};
    const float angle = squares.at(group[group.size() / 2]).angle;
    float low = 0;
    float high = 0;
    float sharp = 0;
    for (std::size_t i = 0; i < group.size(); ++i) {
        const int x = group[i] % squares.columns() * side;
        const int y = group[i] / squares.columns() * side;
        const float at = static_cast<float>(x) * std::cos(angle) + static_cast<float>(y) * std::sin(angle);
        low = i == 0 ? at : std::min(low, at);
        high = i == 0 ? at : std::max(high, at);
        sharp += squares.at(group[i]).sharp;
    }
    // The outermost squares are covered in part, and by the margin as well as by bars.
    const float length = std::max(1.0F, high - low - 0.5F * static_cast<float>(side));
    const float share = length / static_cast<float>(longer_edge);
    return {{true, length, share, sharp / static_cast<float>(group.size())},
            group.size() * static_cast<std::size_t>(side) * static_cast<std::size_t>(side)};
}

} // namespace

BarsSeen bars_seen(const GreyView& picture)
{
    if (picture.pixels == nullptr || picture.width <= small_side || picture.height <= small_side)
        return {};
    const int longer_edge = std::max(picture.width, picture.height);
    const Grid grid = small_grid(picture);
    const Measure with_small = measured(grid, longer_edge);
    const Measure with_large = measured(large_grid(grid), longer_edge);
    // Large squares reach farther over the edges: they count where the small ones see only parts.
    return 3 * with_small.pixels >= 2 * with_large.pixels ? with_small.seen : with_large.seen;
}

} // namespace kiosk
