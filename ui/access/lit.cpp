#include "ui/access/lit.h"

#include "ui/widgets/text.h"

#include <algorithm>

namespace ui {
namespace {

float stroke(const Ui& ui)
{
    return std::max(4.0F, ui.look.sizes.unit / 2);
}

} // namespace

void ring(const Ui& ui, ImVec2 low, ImVec2 high)
{
    const auto& sizes = ui.look.sizes;
    const float wide = stroke(ui);
    const float out = wide / 2; // half of it lies outside, in the gap that every two things have between them
    // Not beyond the glass: a ring that is cut off is no ring.
    const float rim = wide + out + 1;
    low = {std::max(low.x, rim), std::max(low.y, rim)};
    high = {std::min(high.x, sizes.width - rim), std::min(high.y, sizes.height - rim)};
    const auto draw = [&](float grow, float thick, ImU32 colour) {
        canvas().AddRect({low.x - grow, low.y - grow}, {high.x + grow, high.y + grow}, colour, sizes.corner, 0, thick);
    };
    draw(out, 2 * wide, ui.look.theme.ground);
    draw(out, wide, ui.look.theme.ink);
}

void ring_round(const Ui& ui, std::span<const Stop> stops, std::span<const std::size_t> which)
{
    if (which.empty())
        return;
    ImVec2 low = stops[which.front()].low;
    ImVec2 high = stops[which.front()].high;
    for (const std::size_t index : which) {
        low = {std::min(low.x, stops[index].low.x), std::min(low.y, stops[index].low.y)};
        high = {std::max(high.x, stops[index].high.x), std::max(high.y, stops[index].high.y)};
    }
    ring(ui, low, high);
}

void reading_mark(const Ui& ui, const Note& note)
{
    const auto& sizes = ui.look.sizes;
    const float wide = stroke(ui);
    const float x = std::max(wide, note.low.x - 1.5F * sizes.unit);
    canvas().AddRectFilled({x - wide / 2, note.low.y}, {x + wide / 2, note.high.y}, ui.look.theme.ink);
}

} // namespace ui
