#include "kiosk/camera/straighten.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace kiosk {
namespace {

/// Half a pixel: lines that lie at an angle see the bars at other places between the pixels, and their mean knows more
/// than each of them.
constexpr double finest = 0.5;
constexpr int most_values = 900;
constexpr int most_bands = 8;

/// The picture between its pixels.
class Between {
public:
    explicit Between(const GreyView& picture) : picture_(picture) {}
    /// Adds a line of values to `to`: from a place, step by step. Outside the picture the edge goes on.
    void add_line(double x, double y, double step_x, double step_y, std::vector<float>& to) const
    {
        const auto last_x = static_cast<float>(picture_.width - 1) - 0.001F;
        const auto last_y = static_cast<float>(picture_.height - 1) - 0.001F;
        for (std::size_t i = 0; i < to.size(); ++i) {
            const auto at = static_cast<double>(i);
            const float cx = std::clamp(static_cast<float>(x + at * step_x), 0.0F, last_x);
            const float cy = std::clamp(static_cast<float>(y + at * step_y), 0.0F, last_y);
            const int left = static_cast<int>(cx);
            const int top = static_cast<int>(cy);
            const float fx = cx - static_cast<float>(left);
            const float fy = cy - static_cast<float>(top);
            const std::uint8_t* p = picture_.pixels + static_cast<std::ptrdiff_t>(top) * picture_.stride + left;
            const float upper = static_cast<float>(p[0]) + fx * static_cast<float>(p[1] - p[0]);
            const std::uint8_t* q = p + picture_.stride;
            const float lower = static_cast<float>(q[0]) + fx * static_cast<float>(q[1] - q[0]);
            to[i] += upper + fy * (lower - upper);
        }
    }

private:
    const GreyView& picture_;
};

/// The mean of lines from one end of the bars to the other, at an angle: how much of the bars is left in it.
double contrast_at(const Between& between, const Region& region, double height, double angle)
{
    constexpr int lines = 9;
    const auto values = static_cast<std::size_t>(std::clamp(region.across, 16.0, 400.0));
    const double step = region.across / static_cast<double>(values);
    std::vector<float> sums(values, 0.0F);
    const double cosine = std::cos(angle);
    const double sine = std::sin(angle);
    for (int line = 0; line < lines; ++line) {
        const double down = height * ((line + 0.5) / lines - 0.5);
        between.add_line(region.x - 0.5 - down * sine - region.across / 2 * cosine,
                         region.y - 0.5 + down * cosine - region.across / 2 * sine, cosine * step, sine * step, sums);
    }
    double contrast = 0;
    for (std::size_t i = 1; i < sums.size(); ++i)
        contrast += static_cast<double>((sums[i] - sums[i - 1]) * (sums[i] - sums[i - 1]));
    return contrast;
}

/// Edges tell the angle within some degrees: fine bars look steeper in a grid of pixels than they are. The right angle
/// is the one at which bars do not wash out. Half the height is tried, for bars of a can bend and those at a slant
/// converge.
double closer_angle(const Between& between, const Region& region, double height)
{
    double best = region.angle;
    for (const double step : {0.05, 0.025, 0.0125}) { // radians: about three degrees, then less
        const double from = best;
        double most = contrast_at(between, region, height / 2, from);
        for (const int way : {-2, -1, 1, 2}) {
            const double contrast = contrast_at(between, region, height / 2, from + way * step);
            if (contrast > most) {
                most = contrast;
                best = from + way * step;
            }
        }
    }
    return best;
}

} // namespace

Strip straighten(const GreyView& picture, const Region& region)
{
    const double length = region.across * 2;
    Strip strip;
    strip.step = std::max(finest, length / most_values);
    const auto values = static_cast<std::size_t>(length / strip.step);
    strip.middle = static_cast<double>(values) / 2;
    strip.across = region.across / strip.step;
    const double height = std::max(4.0, region.along * 0.85);
    const int bands = std::clamp(static_cast<int>(height / 6), 1, most_bands);
    const int lines = std::clamp(static_cast<int>(height / bands), 1, 12);
    const Between between(picture);
    const double angle = closer_angle(between, region, height);
    const double cosine = std::cos(angle);
    const double sine = std::sin(angle);
    for (int band = 0; band < bands; ++band) {
        auto& sums = strip.bands.emplace_back(values, 0.0F);
        for (int line = 0; line < lines; ++line) {
            const double down = height * ((band + (line + 0.5) / lines) / bands - 0.5);
            const double back = strip.middle * strip.step;
            between.add_line(region.x - 0.5 - down * sine - back * cosine, region.y - 0.5 + down * cosine - back * sine,
                             cosine * strip.step, sine * strip.step, sums);
        }
        for (float& sum : sums)
            sum /= static_cast<float>(lines);
    }
    return strip;
}

} // namespace kiosk
