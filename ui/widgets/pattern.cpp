#include "ui/widgets/pattern.h"

#include "ui/widgets/text.h"

namespace ui {

const SideColours& colours_of(const Ui& ui, Side side)
{
    return side == Side::Left ? ui.look.theme.left : ui.look.theme.right;
}

void pattern(const Ui& ui, Side side, const Area& area)
{
    const float step = 1.5F * ui.look.sizes.unit;
    const ImU32 hue = colours_of(ui, side).hue;
    canvas().PushClipRect(area.low, area.high, true);
    if (side == Side::Left)
        for (float x = area.low.x - area.height(); x < area.high.x; x += step)
            canvas().AddLine({x, area.high.y}, {x + area.height(), area.low.y}, hue, 2 * ui.look.sizes.line);
    else
        for (float y = area.low.y + step / 2; y < area.high.y; y += step)
            for (float x = area.low.x + step / 2; x < area.high.x; x += step)
                canvas().AddCircleFilled({x, y}, step / 5, hue, 12);
    canvas().PopClipRect();
}

void mark(const Ui& ui, Side side, ImVec2 centre, float radius)
{
    const ImU32 hue = colours_of(ui, side).hue;
    if (side == Side::Left)
        canvas().AddRectFilled({centre.x - radius * 0.9F, centre.y - radius * 0.9F},
                               {centre.x + radius * 0.9F, centre.y + radius * 0.9F}, hue);
    else {
        canvas().AddCircleFilled(centre, radius, ui.look.theme.ground, 24);
        canvas().AddCircle(centre, radius * 0.85F, hue, 24, radius * 0.4F);
    }
}

} // namespace ui
