#include "kiosk/camera/turned.h"

#include <algorithm>
#include <cstring>

namespace kiosk {
namespace {

const std::uint8_t* row_of(const GreyView& picture, int y)
{
    return picture.pixels + static_cast<std::ptrdiff_t>(picture.stride) * y;
}

/// By nothing or by half a turn: rows stay rows.
void copy_rows(const GreyView& from, bool upside_down, bool backwards, Frame& into)
{
    const auto width = static_cast<std::size_t>(from.width);
    for (int y = 0; y < from.height; ++y) {
        const std::uint8_t* row = row_of(from, upside_down ? from.height - 1 - y : y);
        std::uint8_t* to = into.pixels.data() + width * static_cast<std::size_t>(y);
        if (backwards)
            std::reverse_copy(row, row + width, to);
        else
            std::memcpy(to, row, width);
    }
}

/// Rows become columns; in squares, so that both stay in the processor's cache.
void copy_columns(const GreyView& from, bool from_right, bool from_bottom, Frame& into)
{
    constexpr int side = 32;
    for (int top = 0; top < into.height; top += side)
        for (int left = 0; left < into.width; left += side)
            for (int y = top; y < std::min(top + side, into.height); ++y) {
                const int column = from_right ? from.width - 1 - y : y;
                std::uint8_t* to = into.pixels.data() + static_cast<std::ptrdiff_t>(into.width) * y;
                for (int x = left; x < std::min(left + side, into.width); ++x)
                    to[x] = row_of(from, from_bottom ? from.height - 1 - x : x)[column];
            }
}

} // namespace

Frame turned(const GreyView& picture, Turn turn)
{
    const int quarters = ((turn.quarters % 4) + 4) % 4;
    const bool lies = quarters % 2 == 1;
    Frame frame;
    frame.width = lies ? picture.height : picture.width;
    frame.height = lies ? picture.width : picture.height;
    frame.pixels.resize(static_cast<std::size_t>(frame.width) * static_cast<std::size_t>(frame.height));
    if (!lies)
        copy_rows(picture, quarters == 2, (quarters == 2) != turn.swap, frame);
    else // a quarter: the new top is the old left; swapped, it is the old right
        copy_columns(picture, (quarters == 3) != turn.swap, quarters == 1, frame);
    return frame;
}

} // namespace kiosk
