#include "kiosk/camera/regions.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

namespace kiosk {
namespace {

/// Edges are gathered over squares of so many pixels; the bars of a small code stand over four of them.
constexpr int block = 16;

/// The edges of one square: how strong, and in which direction. A direction and its opposite are the same edge, so
/// angles are doubled: then they may be added. Grain has no direction and adds nothing to `cosine` and `sine`.
struct Edges {
    float strength = 0;
    float cosine = 0;
    float sine = 0;

    float directed() const { return std::hypot(cosine, sine); }
};

struct Grid {
    int columns = 0;
    int rows = 0;
    std::vector<Edges> cells;
    Edges& at(int column, int row)
    {
        return cells[static_cast<std::size_t>(row) * static_cast<std::size_t>(columns) +
                     static_cast<std::size_t>(column)];
    }
};

/// Sums over a part of one row, in whole numbers: the compiler does eight pixels at a time.
void add_row(const std::uint8_t* row, int stride, std::int32_t (&sums)[3])
{
    std::int32_t xx = 0;
    std::int32_t yy = 0;
    std::int32_t xy = 0;
    for (int x = 0; x < block; ++x) {
        const std::int32_t across = row[x + 1] - row[x - 1];
        const std::int32_t down = row[x + stride] - row[x - stride];
        xx += across * across;
        yy += down * down;
        xy += across * down;
    }
    sums[0] += xx;
    sums[1] += yy;
    sums[2] += xy;
}

/// All rows: of every second one, print that stands in even rows looks like bars.
Grid edges_of(const GreyView& picture)
{
    Grid grid{(picture.width - 2) / block, (picture.height - 2) / block, {}};
    grid.cells.resize(static_cast<std::size_t>(grid.columns) * static_cast<std::size_t>(grid.rows));
    for (int row = 0; row < grid.rows; ++row)
        for (int column = 0; column < grid.columns; ++column) {
            std::int32_t sums[3] = {};
            const auto* from =
                picture.pixels + static_cast<std::ptrdiff_t>(row * block + 1) * picture.stride + column * block + 1;
            for (int y = 0; y < block; ++y)
                add_row(from + static_cast<std::ptrdiff_t>(y) * picture.stride, picture.stride, sums);
            grid.at(column, row) = {static_cast<float>(sums[0] + sums[1]), static_cast<float>(sums[0] - sums[1]),
                                    static_cast<float>(2 * sums[2])};
        }
    return grid;
}

/// What the squares say together with their neighbours: letters cancel out, bars do not.
Grid smoothed(Grid& grid)
{
    Grid out = grid;
    for (int row = 0; row < grid.rows; ++row)
        for (int column = 0; column < grid.columns; ++column) {
            Edges sum;
            for (int dy = -1; dy <= 1; ++dy)
                for (int dx = -1; dx <= 1; ++dx) {
                    const Edges& one =
                        grid.at(std::clamp(column + dx, 0, grid.columns - 1), std::clamp(row + dy, 0, grid.rows - 1));
                    sum.strength += one.strength;
                    sum.cosine += one.cosine;
                    sum.sine += one.sine;
                }
            out.at(column, row) = sum;
        }
    return out;
}

/// Squares that hang together and lie alike, gathered into one region.
class Gathering {
public:
    Gathering(Grid& plain, Grid& smooth, float least)
        : plain_(plain), smooth_(smooth), least_(least), taken_(smooth.cells.size(), false)
    {
    }

    bool free(int column, int row) const { return !taken_[index(column, row)]; }

    Region gather(int column, int row)
    {
        const Edges seed = smooth_.at(column, row);
        std::vector<std::array<int, 2>> cells{{column, row}};
        taken_[index(column, row)] = true;
        for (std::size_t i = 0; i < cells.size(); ++i)
            for (const auto& [dx, dy] : {std::array{1, 0}, std::array{-1, 0}, std::array{0, 1}, std::array{0, -1}})
                join(cells[i][0] + dx, cells[i][1] + dy, seed, cells);
        return region_of(cells);
    }

private:
    std::size_t index(int column, int row) const
    {
        return static_cast<std::size_t>(row) * static_cast<std::size_t>(smooth_.columns) +
               static_cast<std::size_t>(column);
    }
    void join(int column, int row, const Edges& seed, std::vector<std::array<int, 2>>& cells)
    {
        if (column < 0 || row < 0 || column >= smooth_.columns || row >= smooth_.rows || taken_[index(column, row)])
            return;
        const Edges& one = smooth_.at(column, row);
        const float directed = one.directed();
        // Alike: less than 22 degrees apart (the cosine of twice that), directed rather than not, and not faint.
        constexpr float alike = 0.7F;
        const float cosine = (one.cosine * seed.cosine + one.sine * seed.sine) / (directed * seed.directed() + 1e-6F);
        if (directed < least_ || directed < 0.1F * seed.directed() || directed < 0.35F * one.strength || cosine < alike)
            return;
        taken_[index(column, row)] = true;
        cells.push_back({column, row});
    }
    Region region_of(const std::vector<std::array<int, 2>>& cells)
    {
        Region region;
        double cosine = 0;
        double sine = 0;
        double weight = 0;
        for (const auto& [column, row] : cells) {
            const Edges& one = plain_.at(column, row);
            const double w = one.directed();
            cosine += one.cosine;
            sine += one.sine;
            weight += w;
            region.x += w * (column + 0.5) * block;
            region.y += w * (row + 0.5) * block;
        }
        region.x /= weight + 1e-6;
        region.y /= weight + 1e-6;
        region.angle = std::atan2(sine, cosine) / 2;
        region.energy = std::hypot(cosine, sine);
        measure(cells, region);
        return region;
    }
    /// Extents from the spread of what is there: an even row of bars is sqrt(12) times as wide as its deviation.
    void measure(const std::vector<std::array<int, 2>>& cells, Region& region)
    {
        double across = 0;
        double along = 0;
        double weight = 0;
        for (const auto& [column, row] : cells) {
            const double w = plain_.at(column, row).directed();
            const double dx = (column + 0.5) * block - region.x;
            const double dy = (row + 0.5) * block - region.y;
            const double a = dx * std::cos(region.angle) + dy * std::sin(region.angle);
            const double b = dy * std::cos(region.angle) - dx * std::sin(region.angle);
            across += w * a * a;
            along += w * b * b;
            weight += w;
        }
        region.across = std::sqrt(12 * across / (weight + 1e-6) + block * block);
        region.along = std::sqrt(12 * along / (weight + 1e-6) + block * block);
    }

    Grid& plain_;
    Grid& smooth_;
    float least_;
    std::vector<bool> taken_;
};

} // namespace

std::vector<Region> find_bars(const GreyView& picture, std::size_t most)
{
    std::vector<Region> found;
    if (picture.pixels == nullptr || picture.width < 3 * block || picture.height < 3 * block)
        return found;
    Grid plain = edges_of(picture);
    Grid smooth = smoothed(plain);
    // Fainter than steps of three grey levels at every pixel there is nothing to read.
    constexpr float faint = 9.0F * 4 * block * block * 9 / 4;
    std::vector<int> order(smooth.cells.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = static_cast<int>(i);
    std::ranges::sort(order, std::ranges::greater{},
                      [&](int i) { return smooth.cells[static_cast<std::size_t>(i)].directed(); });
    Gathering gathering(plain, smooth, faint);
    for (const int i : order) {
        const Edges& seed = smooth.cells[static_cast<std::size_t>(i)];
        if (seed.directed() < faint || found.size() >= 4 * most)
            break;
        const int column = i % smooth.columns;
        const int row = i / smooth.columns;
        if (!gathering.free(column, row) || seed.directed() < 0.5F * seed.strength)
            continue;
        const Region region = gathering.gather(column, row);
        if (region.across >= 40)
            found.push_back(region);
    }
    std::ranges::sort(found, std::ranges::greater{}, &Region::energy);
    if (found.size() > most)
        found.resize(most);
    return found;
}

} // namespace kiosk
