#include "ui/widgets/grey_picture.h"

#include "ui/widgets/text.h"

#include <cmath>

namespace ui {
namespace {

ImU32 grey_of(std::uint8_t level)
{
    return IM_COL32(level, level, level, 255);
}

} // namespace

Area picture_area(const GreyPicture& view, const Area& room)
{
    const float shape = static_cast<float>(view.width) / static_cast<float>(std::max(1, view.height));
    const float width = std::floor(std::min(room.width(), room.height() * shape));
    const float left = std::floor(room.low.x + (room.width() - width) / 2);
    return {{left, room.low.y}, {left + width, room.low.y + std::floor(width / shape)}};
}

void grey_picture(const GreyPicture& view, const Area& area)
{
    if (!view.can_be_drawn())
        return;
    const int across = view.width - 1;
    const int down = view.height - 1;
    const float step_x = area.width() / static_cast<float>(across);
    const float step_y = area.height() / static_cast<float>(down);
    ImDrawList& list = canvas();
    list.PrimReserve(6 * across * down, view.width * view.height);
    const ImVec2 white = ImGui::GetFontTexUvWhitePixel();
    const unsigned first = list._VtxCurrentIdx;
    const auto corner = [&](int x, int y) {
        return static_cast<ImDrawIdx>(first + static_cast<unsigned>(y * view.width + x));
    };
    for (int y = 0; y < down; ++y)
        for (int x = 0; x < across; ++x)
            for (const ImDrawIdx index : {corner(x, y), corner(x + 1, y), corner(x + 1, y + 1), corner(x, y),
                                          corner(x + 1, y + 1), corner(x, y + 1)})
                list.PrimWriteIdx(index);
    std::size_t at = 0;
    for (int y = 0; y < view.height; ++y)
        for (int x = 0; x < view.width; ++x)
            list.PrimWriteVtx(
                {area.low.x + step_x * static_cast<float>(x), area.low.y + step_y * static_cast<float>(y)}, white,
                grey_of((*view.grey)[at++]));
}

} // namespace ui
