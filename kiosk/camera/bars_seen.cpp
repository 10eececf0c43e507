#include "kiosk/camera/bars_seen.h"

#include "kiosk/camera/straighten.h"

#include <algorithm>
#include <cmath>

namespace kiosk {
namespace {

/// The steepest step within one pixel of the picture, against the way from ink to paper.
float sharp_in(const std::vector<float>& band, double step)
{
    const auto pixel = static_cast<std::size_t>(std::max(1L, std::lround(1 / step)));
    float steepest = 0;
    for (std::size_t i = pixel; i < band.size(); ++i)
        steepest = std::max(steepest, std::abs(band[i] - band[i - pixel]));
    const auto [ink, paper] = std::ranges::minmax(band);
    return paper > ink ? steepest / (paper - ink) : 0;
}

float sharp_in(const Strip& strip)
{
    float sum = 0;
    for (const auto& band : strip.bands)
        sum += sharp_in(band, strip.step) / static_cast<float>(strip.bands.size());
    return sum;
}

} // namespace

BarsSeen bars_seen(const GreyView& picture)
{
    const auto regions = find_bars(picture, 1);
    if (regions.empty())
        return {};
    const auto length = static_cast<float>(regions.front().across);
    return {true, length, length / static_cast<float>(std::max(picture.width, picture.height)),
            sharp_in(straighten(picture, regions.front()))};
}

} // namespace kiosk
