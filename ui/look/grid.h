// Areas of the screen, cut off one from the other: where a thing may stand.
#pragma once

#include <imgui.h>

#include <algorithm>

namespace ui {

/// A rectangle in pixels.
struct Area {
    ImVec2 low{0, 0};
    ImVec2 high{0, 0};
    [[nodiscard]] float width() const { return high.x - low.x; }
    [[nodiscard]] float height() const { return high.y - low.y; }

    [[nodiscard]] Area inset(float by) const { return {{low.x + by, low.y + by}, {high.x - by, high.y - by}}; }
    [[nodiscard]] Area inset(float by_x, float by_y) const
    {
        return {{low.x + by_x, low.y + by_y}, {high.x - by_x, high.y - by_y}};
    }

    /// Takes a strip off one edge and keeps the rest; a strip larger than the area takes it all.
    Area cut_top(float height_px)
    {
        const float at = std::min(low.y + height_px, high.y);
        const Area strip{low, {high.x, at}};
        low.y = at;
        return strip;
    }
    Area cut_bottom(float height_px)
    {
        const float at = std::max(high.y - height_px, low.y);
        const Area strip{{low.x, at}, high};
        high.y = at;
        return strip;
    }
    Area cut_left(float width_px)
    {
        const float at = std::min(low.x + width_px, high.x);
        const Area strip{low, {at, high.y}};
        low.x = at;
        return strip;
    }
    Area cut_right(float width_px)
    {
        const float at = std::max(high.x - width_px, low.x);
        const Area strip{{at, low.y}, high};
        high.x = at;
        return strip;
    }
};

} // namespace ui
