#include "kiosk/camera/small_picture.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace kiosk {
namespace {

constexpr int points = 2; ///< a pixel is the mean of so many columns and rows of the picture

std::uint8_t mean_of(const GreyView& picture, double left, double top, double step)
{
    int sum = 0;
    for (int j = 0; j < points; ++j)
        for (int i = 0; i < points; ++i) {
            const int x = std::min(picture.width - 1, static_cast<int>(left + step * (i + 0.5) / points));
            const int y = std::min(picture.height - 1, static_cast<int>(top + step * (j + 0.5) / points));
            sum += picture.pixels[static_cast<std::ptrdiff_t>(picture.stride) * y + x];
        }
    return static_cast<std::uint8_t>(sum / (points * points));
}

} // namespace

Frame small_picture(const GreyView& picture, int most_pixels, bool mirrored)
{
    Frame small;
    if (picture.pixels == nullptr || picture.width <= 0 || picture.height <= 0 || most_pixels <= 0)
        return small;
    const double step = std::max(1.0, std::sqrt(static_cast<double>(picture.width) * picture.height / most_pixels));
    small.width = std::max(1, static_cast<int>(picture.width / step));
    small.height = std::max(1, static_cast<int>(picture.height / step));
    small.pixels.reserve(static_cast<std::size_t>(small.width) * static_cast<std::size_t>(small.height));
    for (int y = 0; y < small.height; ++y)
        for (int x = 0; x < small.width; ++x)
            small.pixels.push_back(mean_of(picture, step * (mirrored ? small.width - 1 - x : x), step * y, step));
    return small;
}

Frame middle_of(const GreyView& picture, int most_pixels, bool mirrored)
{
    if (picture.pixels == nullptr || picture.width <= 0 || picture.height <= 0 || most_pixels <= 0)
        return {};
    const double times = std::sqrt(static_cast<double>(picture.width) * picture.height / most_pixels);
    GreyView middle = picture;
    if (times > 1) {
        middle.width = std::max(1, static_cast<int>(picture.width / times));
        middle.height = std::max(1, static_cast<int>(picture.height / times));
        middle.pixels += static_cast<std::ptrdiff_t>(picture.stride) * ((picture.height - middle.height) / 2) +
                         (picture.width - middle.width) / 2;
    }
    return small_picture(middle, most_pixels, mirrored);
}

} // namespace kiosk
