#include "ui/widgets/line_5_20.h"

#include "ui/widgets/pattern.h"
#include "ui/widgets/text.h"

#include <cmath>

namespace ui {
namespace {

struct Part {
    int from;
    int to;
    float at;
    float width;
};

constexpr Part parts[] = {{0, 5, 0.0F, 0.25F}, {5, 20, 0.25F, 0.375F}, {20, 100, 0.625F, 0.375F}};

float radius_of(const Ui& ui)
{
    return 1.15F * ui.look.sizes.unit;
}

/// The line itself lies inside its area, so that a mark at its end, and the arrow beside it, stay inside too.
Area track_of(const Ui& ui, const Area& area)
{
    return area.inset(3 * ui.look.sizes.unit, 0);
}

void draw_mark(const Ui& ui, Side side, const Area& track, float y, int percent)
{
    const float radius = radius_of(ui);
    const float x = track.low.x + place_on_line(percent) * track.width();
    const float dy = side == Side::Left ? -radius - ui.look.sizes.line : radius + ui.look.sizes.line;
    mark(ui, side, {std::round(x), y + dy}, radius);
    if (percent > 100) { // beyond the end: an arrow beside the mark; its figure stands in the row
        const float tip = x + 2.3F * radius;
        canvas().AddTriangleFilled({tip - radius, y + dy - radius * 0.8F}, {tip - radius, y + dy + radius * 0.8F},
                                   {tip, y + dy}, colours_of(ui, side).hue);
    }
}

} // namespace

float place_on_line(int percent)
{
    if (percent <= 0)
        return 0;
    for (const auto& part : parts)
        if (percent <= part.to)
            return part.at +
                   part.width * static_cast<float>(percent - part.from) / static_cast<float>(part.to - part.from);
    return 1;
}

float line_5_20_height(const Ui& ui)
{
    return 4 * radius_of(ui) + 4 * ui.look.sizes.line;
}

void line_5_20(const Ui& ui, const Area& area, std::optional<int> left, std::optional<int> right)
{
    const Area track = track_of(ui, area);
    const float y = std::round((area.low.y + area.high.y) / 2);
    const ImU32 ink = ui.look.theme.hairline;
    canvas().AddLine({track.low.x, y}, {track.high.x, y}, ink, 2 * ui.look.sizes.line);
    for (const float at : {0.0F, 0.25F, 0.625F, 1.0F}) {
        const float x = std::round(track.low.x + at * track.width());
        const float reach = at == 0.25F || at == 0.625F ? line_5_20_height(ui) / 2 : ui.look.sizes.unit;
        canvas().AddLine({x, y - reach}, {x, y + reach}, ink, 2 * ui.look.sizes.line);
    }
    if (left)
        draw_mark(ui, Side::Left, track, y, *left);
    if (right)
        draw_mark(ui, Side::Right, track, y, *right);
}

float line_5_20_scale_begin(const Ui& ui, const Area& area)
{
    const Area track = track_of(ui, area);
    return track.low.x + 0.25F * track.width() - text_width(ui, "5%", Style::QuietNote) / 2;
}

void line_5_20_scale(const Ui& ui, const Area& area)
{
    const Area track = track_of(ui, area);
    const std::pair<const char*, float> figures[] = {{"5%", 0.25F}, {"20%", 0.625F}, {"100%", 1.0F}};
    const auto begin_of = [&](const char* words, float at, Style style) {
        const float width = text_width(ui, words, style);
        return std::min(track.low.x + at * track.width() - width / 2, area.high.x - width);
    };
    // A short line under large letters has smaller ones: 5 and 20 must both stand there.
    const float of_5 = begin_of("5%", 0.25F, Style::QuietNote) + text_width(ui, "5%", Style::QuietNote);
    const bool both = begin_of("20%", 0.625F, Style::QuietNote) > of_5 + ui.look.sizes.unit / 2;
    const Style style = both ? Style::QuietNote : Style::Bar;
    float free_from = area.low.x;
    for (const auto& [words, at] : figures) {
        const float width = text_width(ui, words, style);
        const float x = begin_of(words, at, style);
        if (x < free_from) // nor what comes behind it: it would seem to stand where this one belongs
            break;
        free_from = x + width + ui.look.sizes.unit / 2;
        text(ui, words, style, {{x, area.low.y}, {x + width + 1, area.high.y}}, Align::Left, Role::Figure);
    }
}

} // namespace ui
