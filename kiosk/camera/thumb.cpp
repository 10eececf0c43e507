#include "kiosk/camera/thumb.h"

#include <algorithm>
#include <cstdlib>

namespace kiosk {
namespace {

constexpr int points = 8; ///< a cell is looked at in so many columns and rows

std::uint8_t mean_of(const GreyView& picture, int left, int right, int top, int bottom)
{
    int sum = 0;
    for (int j = 0; j < points; ++j) {
        const int y = top + (bottom - top) * (2 * j + 1) / (2 * points);
        const std::uint8_t* row = picture.pixels + static_cast<std::ptrdiff_t>(picture.stride) * y;
        for (int i = 0; i < points; ++i)
            sum += row[left + (right - left) * (2 * i + 1) / (2 * points)];
    }
    return static_cast<std::uint8_t>(sum / (points * points));
}

int mean_of(const Thumb& thumb)
{
    int sum = 0;
    for (const int cell : thumb.cells)
        sum += cell;
    return sum / static_cast<int>(thumb.cells.size());
}

} // namespace

Thumb thumb_of(const GreyView& picture)
{
    Thumb thumb;
    if (picture.pixels == nullptr || picture.width < Thumb::columns || picture.height < Thumb::rows)
        return thumb;
    std::size_t cell = 0;
    for (int y = 0; y < Thumb::rows; ++y)
        for (int x = 0; x < Thumb::columns; ++x)
            thumb.cells[cell++] =
                mean_of(picture, picture.width * x / Thumb::columns, picture.width * (x + 1) / Thumb::columns,
                        picture.height * y / Thumb::rows, picture.height * (y + 1) / Thumb::rows);
    return thumb;
}

int cells_changed(const Thumb& before, const Thumb& after)
{
    // The grain of a camera in poor light is some 12 levels; over 64 points little more than one is left of it.
    constexpr int noticeable = 8;
    const int everywhere = mean_of(after) - mean_of(before);
    int changed = 0;
    for (std::size_t i = 0; i < before.cells.size(); ++i)
        changed += std::abs(int{after.cells[i]} - int{before.cells[i]} - everywhere) >= noticeable ? 1 : 0;
    return changed;
}

bool is_black(const Thumb& thumb)
{
    constexpr int darkest_thing = 40;
    return *std::ranges::max_element(thumb.cells) <= darkest_thing;
}

} // namespace kiosk
