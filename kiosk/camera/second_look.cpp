#include "kiosk/camera/second_look.h"

#include <algorithm>
#include <cstddef>

namespace kiosk {
namespace {

constexpr int rows_in_one = 4;
/// A pixel is pushed away from the mean of its neighbourhood by twice their difference. The neighbourhood reaches about
/// one bar to each side: five pixels of the doubled row, two and a half of the camera's.
constexpr int push = 2;
constexpr int reach = 5;

/// The sums of four rows, with a pixel put between each two.
void widen(const GreyView& picture, int first_row, std::vector<int>& wide)
{
    const auto width = static_cast<std::size_t>(picture.width);
    std::fill(wide.begin(), wide.end(), 0);
    for (int row = first_row; row < first_row + rows_in_one; ++row) {
        const auto* from = picture.pixels + static_cast<std::ptrdiff_t>(row) * picture.stride;
        for (std::size_t x = 0; x < width; ++x)
            wide[2 * x] += from[x];
    }
    for (std::size_t x = 0; x + 1 < width; ++x)
        wide[2 * x + 1] = (wide[2 * x] + wide[2 * x + 2]) / 2;
    wide[2 * width - 1] = wide[2 * width - 2];
}

/// Writes the row sharpened, back in the scale of one pixel. Beyond its ends the row goes on as it ended.
void sharpen(const std::vector<int>& wide, std::uint8_t* to)
{
    const int last = static_cast<int>(wide.size()) - 1;
    const auto at = [&](int x) { return wide[static_cast<std::size_t>(std::clamp(x, 0, last))]; };
    int sum = 0;
    for (int x = -reach; x <= reach; ++x)
        sum += at(x);
    for (int x = 0; x <= last; ++x) {
        const int mean = sum / (2 * reach + 1);
        const int pushed = (at(x) + push * (at(x) - mean)) / rows_in_one;
        to[x] = static_cast<std::uint8_t>(std::clamp(pushed, 0, 255));
        sum += at(x + reach + 1) - at(x - reach);
    }
}

} // namespace

Frame second_look(const GreyView& picture)
{
    Frame made;
    if (picture.height < 2 * rows_in_one)
        return made;
    made.width = 2 * picture.width;
    made.height = picture.height / rows_in_one;
    const auto row_bytes = static_cast<std::size_t>(made.width);
    made.pixels.resize(row_bytes * static_cast<std::size_t>(made.height));
    std::vector<int> wide(row_bytes);
    for (int y = 0; y < made.height; ++y) {
        widen(picture, y * rows_in_one, wide);
        sharpen(wide, made.pixels.data() + row_bytes * static_cast<std::size_t>(y));
    }
    return made;
}

Frame laid_down(const GreyView& picture)
{
    constexpr int tile = 32; // square by square: both pictures stay in the cache
    Frame made;
    made.width = picture.height;
    made.height = picture.width;
    made.pixels.resize(static_cast<std::size_t>(made.width) * static_cast<std::size_t>(made.height));
    for (int top = 0; top < picture.height; top += tile)
        for (int left = 0; left < picture.width; left += tile)
            for (int y = top; y < std::min(top + tile, picture.height); ++y) {
                const auto* from = picture.pixels + static_cast<std::ptrdiff_t>(y) * picture.stride;
                for (int x = left; x < std::min(left + tile, picture.width); ++x)
                    made.pixels[static_cast<std::size_t>(x) * static_cast<std::size_t>(made.width) +
                                static_cast<std::size_t>(y)] = from[x];
            }
    return made;
}

} // namespace kiosk
