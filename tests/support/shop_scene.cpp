#include "tests/support/shop_scene.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace test {
namespace {

struct Vector {
    double x;
    double y;
    double z;
};

double dot(const Vector& a, const Vector& b)
{
    return a.x * b.x + a.y * b.y + a.z * b.z;
}

/// A place on the package, in modules from its middle, or nothing.
struct Place {
    double x = 0;
    double y = 0;
    bool on_it = false;
};

double radians(double degrees)
{
    return degrees * std::numbers::pi / 180;
}

/// An even number from 0 to 1 that belongs to a cell of a grid.
double chance_of(std::uint64_t seed, long x, long y)
{
    std::uint64_t bits = seed * 0x9E3779B97F4A7C15ULL + static_cast<std::uint64_t>(x) * 0xBF58476D1CE4E5B9ULL +
                         static_cast<std::uint64_t>(y) * 0x94D049BB133111EBULL;
    bits = (bits ^ (bits >> 30)) * 0xBF58476D1CE4E5B9ULL;
    bits = (bits ^ (bits >> 27)) * 0x94D049BB133111EBULL;
    return static_cast<double>((bits ^ (bits >> 31)) >> 11) / 9007199254740992.0;
}

/// Rays from the pixels to the package: it stands in space turned, leaning and yawed, with its middle as far away as
/// makes one module so many pixels there.
class Rays {
public:
    explicit Rays(const Scene& scene) : scene_(scene), focal_(scene.focal)
    {
        const double a = radians(scene.turn);
        const double b = radians(scene.lean);
        const double c = radians(scene.yaw);
        // The package's own directions, seen from the camera: first lean and yaw, then the turn in the picture.
        const Vector right{std::cos(c), 0, std::sin(c)};
        const Vector down{std::sin(b) * std::sin(c), std::cos(b), -std::sin(b) * std::cos(c)};
        const auto turned = [a](const Vector& v) {
            return Vector{v.x * std::cos(a) - v.y * std::sin(a), v.x * std::sin(a) + v.y * std::cos(a), v.z};
        };
        right_ = turned(right);
        down_ = turned(down);
        away_ = {right_.y * down_.z - right_.z * down_.y, right_.z * down_.x - right_.x * down_.z,
                 right_.x * down_.y - right_.y * down_.x};
        const double distance = focal_ / scene.module;
        middle_ = {scene.off_x / focal_ * distance, scene.off_y / focal_ * distance, distance};
    }

    Place meet(double x, double y) const
    {
        const double middle_row = scene_.height / 2.0;
        x += scene_.skew * (y - middle_row) / scene_.height;
        const Vector ray{(x - scene_.width / 2.0) / focal_, (y - middle_row) / focal_, 1};
        // In the package's own directions, from its middle.
        const Vector to{-dot(middle_, right_), -dot(middle_, down_), -dot(middle_, away_)};
        const Vector along{dot(ray, right_), dot(ray, down_), dot(ray, away_)};
        if (scene_.face == Face::Flat)
            return flat(to, along);
        return scene_.face == Face::CanUpright ? round(to.x, to.y, to.z, along.x, along.y, along.z, false)
                                               : round(to.y, to.x, to.z, along.y, along.x, along.z, true);
    }

private:
    static Place flat(const Vector& to, const Vector& along)
    {
        if (std::abs(along.z) < 1e-9)
            return {};
        const double t = -to.z / along.z;
        return {to.x + t * along.x, to.y + t * along.y, t > 0};
    }
    /// A cylinder through the middle, its axis behind it: `around` is the direction in which it is bent.
    Place round(double to_around, double to_axis, double to_away, double along_around, double along_axis,
                double along_away, bool lying) const
    {
        const double r = scene_.radius;
        const double depth = to_away - r; // from the axis
        const double a = along_around * along_around + along_away * along_away;
        const double b = to_around * along_around + depth * along_away;
        const double c = to_around * to_around + depth * depth - r * r;
        const double inside = b * b - a * c;
        if (inside <= 0)
            return {};
        const double t = (-b - std::sqrt(inside)) / a;
        const double angle = std::atan2(to_around + t * along_around, -(depth + t * along_away));
        const double bent = r * angle;
        const double straight = to_axis + t * along_axis;
        return {lying ? straight : bent, lying ? bent : straight, t > 0};
    }

    const Scene& scene_;
    double focal_;
    Vector right_{};
    Vector down_{};
    Vector away_{};
    Vector middle_{};
};

/// How much ink lies left of a place in a row of bars: the ink under a pixel is a difference of two such sums, so that
/// no bar is ever lost between two samples.
class Bars {
public:
    explicit Bars(const PrintedCode& code) : code_(code), width_(static_cast<double>(code.modules.size()))
    {
        std::vector<bool> fine(static_cast<std::size_t>((width_ + 2 * beyond) * steps), false);
        for (std::size_t i = 0; i < code.modules.size(); ++i) {
            if (!code.modules[i])
                continue;
            const bool begins = i == 0 || !code.modules[i - 1];
            const bool ends = i + 1 == code.modules.size() || !code.modules[i + 1];
            const double from = static_cast<double>(i) - (begins ? code.ink_gain / 2 : 0);
            const double to = static_cast<double>(i) + 1 + (ends ? code.ink_gain / 2 : 0);
            for (auto step = step_of(from); step < step_of(to); ++step)
                fine[step] = true;
        }
        sums_.push_back(0);
        for (const bool ink : fine)
            sums_.push_back(sums_.back() + (ink ? 1.0 / steps : 0.0));
    }
    /// The part of ink from `left` to `right`, in modules from the code's middle.
    double ink(double left, double right) const { return (sum(right) - sum(left)) / (right - left); }
    double half_width() const { return width_ / 2; }
    const PrintedCode& code() const { return code_; }

private:
    static constexpr double beyond = 1;
    static constexpr double steps = 32;
    static std::size_t step_of(double module) { return static_cast<std::size_t>((module + beyond) * steps + 0.5); }
    double sum(double x) const
    {
        const double at = std::clamp((x + width_ / 2 + beyond) * steps, 0.0, static_cast<double>(sums_.size() - 1));
        const auto whole = std::min(static_cast<std::size_t>(at), sums_.size() - 2);
        return sums_[whole] + (sums_[whole + 1] - sums_[whole]) * (at - static_cast<double>(whole));
    }

    const PrintedCode& code_;
    double width_;
    std::vector<double> sums_;
};

/// Something like print: rows of strokes and of blocks, of which `fill` are there.
double strokes(std::uint64_t seed, double x, double y, double size, double fill)
{
    const auto row = static_cast<long>(std::floor(y / (2 * size)));
    const double in_row = y / (2 * size) - static_cast<double>(row);
    if (in_row > 0.55 || chance_of(seed, row, -77) > 0.75) // space between lines, and lines that are empty
        return 0;
    const auto letter = static_cast<long>(std::floor(x / size));
    if (chance_of(seed, letter, row) > fill)
        return 0;
    const auto column = static_cast<long>(std::floor(x / size * 4));
    const auto stroke = static_cast<long>(std::floor(in_row / 0.55 * 5));
    return chance_of(seed + 1, column, row * 8 + stroke) < 0.5 ? 1 : 0;
}

/// What one pixel sees: where its ray meets the package, and how large the pixel is there.
struct Spot {
    Place place;
    double across; ///< in modules
};

class Print {
public:
    explicit Print(const Scene& scene) : scene_(scene)
    {
        for (const PrintedCode& code : scene.codes)
            bars_.emplace_back(code);
    }
    double reflects(const Spot& spot) const
    {
        for (const Bars& bars : bars_) {
            const double x = spot.place.x - bars.code().x;
            const double y = spot.place.y - bars.code().y;
            const double half = bars.code().bar_height / 2;
            const bool beside =
                x < -bars.half_width() - bars.code().margin_left || x > bars.half_width() + bars.code().margin_right;
            const bool alone = bars.code().figures_below; // rows of a square code have nothing between them
            if (beside || y < -half - (alone ? 4 : 0) || y > half + (alone ? 12 : 0))
                continue;
            if (std::abs(y) <= half)
                return mix(bars.ink(x - spot.across / 2, x + spot.across / 2));
            const bool figures =
                bars.code().figures_below && y > half + 2 && y < half + 9 && std::abs(x) < bars.half_width();
            return mix(figures ? strokes(scene_.seed + 5, x, y - half - 2, 6.5, 0.9) : 0);
        }
        return beside_codes(spot.place);
    }

private:
    double mix(double ink) const { return scene_.paper + (scene_.ink - scene_.paper) * ink; }
    double beside_codes(const Place& place) const
    {
        const auto panel = chance_of(scene_.seed, static_cast<long>(std::floor(place.x / 140)),
                                     static_cast<long>(std::floor(place.y / 110)));
        const double ground = scene_.package * (1 - scene_.clutter * 0.6 * panel);
        if (chance_of(scene_.seed + 3, static_cast<long>(std::floor(place.y / 40)), 5) > scene_.clutter)
            return ground;
        const double size = 4 + 8 * chance_of(scene_.seed + 4, static_cast<long>(std::floor(place.y / 40)), 6);
        const double other = panel > 0.5 ? scene_.paper : scene_.ink;
        return ground + (other - ground) * 0.8 * strokes(scene_.seed + 2, place.x, place.y, size, 0.85);
    }

    const Scene& scene_;
    std::vector<Bars> bars_;
};

/// What lies behind: planes of one grey, with a few edges.
double behind(const Scene& scene, int x, int y)
{
    const auto column = static_cast<long>(x * 8 / scene.width);
    const auto row = static_cast<long>(y * 5 / scene.height);
    const double other = chance_of(scene.seed + 9, column, row);
    double grey = scene.behind * (1 + scene.clutter * (other - 0.5));
    if (scene.clutter > 0.3 && other > 0.8) // the next packages on the shelf
        grey += 0.4 * scene.clutter * strokes(scene.seed + 10, x, y, 9 + 20 * other, 0.8);
    return grey;
}

double lit(const Scene& scene, int x, int y)
{
    const double angle = radians(scene.shade_turn);
    const double along =
        ((x * 2.0 / scene.width - 1) * std::cos(angle) + (y * 2.0 / scene.height - 1) * std::sin(angle)) / 2;
    return 1 - scene.shade * (along + 0.5);
}

double mirrored(const Scene& scene, const Place& place)
{
    if (scene.glare <= 0)
        return 0;
    const double dx = (place.x - scene.glare_x) / scene.glare_size;
    const double dy = (place.y - scene.glare_y) / scene.glare_size;
    return scene.glare * std::exp(-(dx * dx + dy * dy) / 2);
}

/// How many modules one pixel covers there, across the bars.
double across_of(const Place& here, const Place& right, const Place& below)
{
    const double dx = right.on_it ? right.x - here.x : 0;
    const double dy = below.on_it ? below.x - here.x : 0;
    return std::max(1e-3, std::abs(dx) + std::abs(dy));
}

} // namespace

Light light_of(const Scene& scene)
{
    Light light{scene.width, scene.height, {}};
    light.grey.resize(static_cast<std::size_t>(scene.width) * static_cast<std::size_t>(scene.height));
    const Rays rays(scene);
    const Print print(scene);
    const auto row_of = [&](int y) {
        std::vector<Place> row;
        for (int x = 0; x <= scene.width; ++x)
            row.push_back(rays.meet(x + 0.5, y + 0.5));
        return row;
    };
    std::vector<Place> row = row_of(0);
    for (int y = 0; y < scene.height; ++y) {
        std::vector<Place> next = row_of(y + 1);
        for (int x = 0; x < scene.width; ++x) {
            const auto at = static_cast<std::size_t>(x);
            const Place& here = row[at];
            const double half_high = scene.face == Face::CanLying ? scene.radius * 1.4 : 130;
            const bool on_package = here.on_it && std::abs(here.x) < 220 && std::abs(here.y) < half_high;
            const double reflected =
                on_package ? print.reflects({here, across_of(here, row[at + 1], next[at])}) : behind(scene, x, y);
            light.at(x, y) =
                static_cast<float>(reflected * lit(scene, x, y) + (on_package ? mirrored(scene, here) : 0));
        }
        row.swap(next);
    }
    return light;
}

} // namespace test
