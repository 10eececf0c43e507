#include "ui/parts/side_header.h"

#include "ui/widgets/button.h"
#include "ui/widgets/pattern.h"
#include "ui/widgets/text.h"

#include <cmath>
#include <string>

namespace ui {
namespace {

float strip_width(const Ui& ui)
{
    return 2.5F * ui.look.sizes.unit;
}

float column_width(const Ui& ui, float width)
{
    return std::floor((width - ui.look.sizes.unit) / 2);
}

Area column(const Ui& ui, const Area& area, Side side)
{
    Area half = area;
    return side == Side::Left ? half.cut_left(column_width(ui, area.width()))
                              : half.cut_right(column_width(ui, area.width()));
}

/// The words' own area: inside the tint, beside the pattern at the outer edge.
Area inside(const Ui& ui, Area head, Side side)
{
    if (side == Side::Left)
        head.cut_left(strip_width(ui));
    else
        head.cut_right(strip_width(ui));
    return head.inset(2 * ui.look.sizes.unit, 1.5F * ui.look.sizes.unit);
}

Style name_style(HeadSize size)
{
    return size == HeadSize::Full ? Style::Name : Style::Strong;
}

const std::string& keep_words(const Ui& ui, const State& state, Side side)
{
    const auto& held = state.sides[index_of(side)];
    return ui.language.text(held && held->kept ? TextId::button_kept : TextId::button_keep);
}

/// "Left · Millbrook Bend", beside the mark.
std::string place_line(const SideWords& words)
{
    return words.brand.empty() ? words.place : words.place + " · " + words.brand;
}

float place_height(const Ui& ui, const SideWords& words, float width)
{
    return text_height(ui, place_line(words), Style::Note, width);
}

float mark_room(const Ui& ui)
{
    return line_height(ui, Style::Note);
}

float keep_width(const Ui& ui)
{
    return std::max(button_width(ui, ui.language.text(TextId::button_keep)),
                    button_width(ui, ui.language.text(TextId::button_kept)));
}

float head_height(const Ui& ui, const SideWords& words, float width, HeadSize size)
{
    const float inner = width - strip_width(ui) - 4 * ui.look.sizes.unit;
    float height = 3 * ui.look.sizes.unit;
    if (size == HeadSize::Short)
        return height + text_height(ui, words.name, Style::Strong, inner - mark_room(ui));
    height += std::max(ui.look.sizes.target,
                       place_height(ui, words, inner - mark_room(ui) - keep_width(ui) - ui.look.sizes.unit));
    height += text_height(ui, words.name, Style::Name, inner);
    height += text_height(ui, words.servings, Style::Note, inner);
    if (!words.net.empty())
        height += text_height(ui, words.net, Style::QuietNote, inner);
    return height;
}

void keep_button(const Ui& ui, const State& state, Side side, const Area& area, Actions& asked)
{
    const auto& held = state.sides[index_of(side)];
    const bool kept = held && held->kept;
    if (button(ui, keep_words(ui, state, side), kept ? TextId::button_kept : TextId::button_keep, area,
               {Style::Note, kept, false, Align::Centre}))
        asked.push_back(ToggleKeep{side});
}

/// The name, touchable; underlined while it is what changed last.
float name_line(const Ui& ui, const State& state, Side side, const std::string& name, Style style, const Area& area,
                Actions& asked)
{
    const float height = text_height(ui, name, style, area.width());
    const Area touch{area.low, {area.high.x, area.low.y + height}};
    text(ui, name, style, touch, Align::Left, Role::Heading);
    const Note drawn = ui.notes.back();
    if (button(ui, ui.language.text(TextId::button_open_label), TextId::button_open_label, touch,
               {style, false, true, Align::Left}))
        asked.push_back(OpenLabel{side});
    if (state.newest == side) {
        const float y = drawn.high.y - ui.look.sizes.line;
        canvas().AddLine({drawn.low.x, y}, {drawn.high.x, y}, ui.look.theme.ink, 2 * ui.look.sizes.line);
    }
    return height;
}

void head(const Ui& ui, const State& state, Side side, const Area& area, HeadSize size, Actions& asked)
{
    const auto& words = state.pair->sides[index_of(side)];
    const auto& colours = colours_of(ui, side);
    const auto& sizes = ui.look.sizes;
    canvas().AddRectFilled(area.low, area.high, colours.tint);
    Area edge = area;
    pattern(ui, side, side == Side::Left ? edge.cut_left(strip_width(ui)) : edge.cut_right(strip_width(ui)));
    Area rest = inside(ui, area, side);
    const float radius = 0.32F * mark_room(ui);
    if (size == HeadSize::Short) {
        Area mark_area = rest.cut_left(mark_room(ui));
        mark(ui, side, {mark_area.low.x + radius, mark_area.low.y + line_height(ui, Style::Strong) / 2}, radius);
        name_line(ui, state, side, words.name, name_style(size), rest, asked);
        return;
    }
    const float inner = rest.width() - mark_room(ui) - keep_width(ui) - sizes.unit;
    const float first = std::max(sizes.target, place_height(ui, words, inner));
    Area top = rest.cut_top(first);
    Area keep = top.cut_right(keep_width(ui));
    keep.high.y = keep.low.y + sizes.target;
    top.cut_right(sizes.unit);
    mark(ui, side, {top.low.x + radius, top.low.y + line_height(ui, Style::Note) / 2}, radius);
    top.cut_left(mark_room(ui));
    text_in(ui, place_line(words), Style::Note, top, Align::Left, Role::Text, colours.hue);
    keep_button(ui, state, side, keep, asked);
    rest.cut_top(name_line(ui, state, side, words.name, name_style(size), rest, asked));
    rest.cut_top(text(ui, words.servings, Style::Note, rest));
    if (!words.net.empty())
        text(ui, words.net, Style::QuietNote, rest);
}

/// What the short head leaves out, one side of it.
float rest_of_head(const Ui& ui, const State& state, Side side, float width)
{
    const auto& words = state.pair->sides[index_of(side)];
    float height = text_height(ui, place_line(words), Style::Note, width - mark_room(ui)) +
                   text_height(ui, words.servings, Style::Note, width);
    if (!words.net.empty())
        height += text_height(ui, words.net, Style::QuietNote, width);
    return height + ui.look.sizes.unit + button_height(ui, keep_words(ui, state, side), Style::Note, width);
}

} // namespace

float heads_height(const Ui& ui, const State& state, float width, HeadSize size)
{
    const float half = column_width(ui, width);
    return std::max(head_height(ui, state.pair->sides[0], half, size),
                    head_height(ui, state.pair->sides[1], half, size));
}

void heads(const Ui& ui, const State& state, const Area& area, HeadSize size, Actions& asked)
{
    for (const Side side : {Side::Left, Side::Right}) {
        ImGui::PushID(static_cast<int>(index_of(side)));
        head(ui, state, side, column(ui, area, side), size, asked);
        ImGui::PopID();
    }
}

float head_rest_height(const Ui& ui, const State& state, float width)
{
    const float half = column_width(ui, width) - 2 * ui.look.sizes.unit;
    return std::max(rest_of_head(ui, state, Side::Left, half), rest_of_head(ui, state, Side::Right, half));
}

void head_rest(const Ui& ui, const State& state, const Area& area, Actions& asked)
{
    for (const Side side : {Side::Left, Side::Right}) {
        ImGui::PushID(static_cast<int>(index_of(side)));
        const auto& words = state.pair->sides[index_of(side)];
        Area rest = column(ui, area, side).inset(ui.look.sizes.unit, 0);
        Area first = rest.cut_top(text_height(ui, place_line(words), Style::Note, rest.width() - mark_room(ui)));
        const float radius = 0.32F * mark_room(ui);
        mark(ui, side, {first.low.x + radius, first.low.y + line_height(ui, Style::Note) / 2}, radius);
        first.cut_left(mark_room(ui));
        text_in(ui, place_line(words), Style::Note, first, Align::Left, Role::Text, colours_of(ui, side).hue);
        rest.cut_top(text(ui, words.servings, Style::Note, rest));
        if (!words.net.empty())
            rest.cut_top(text(ui, words.net, Style::QuietNote, rest));
        rest.cut_top(ui.look.sizes.unit);
        const auto& keep = keep_words(ui, state, side);
        const float width = std::min(rest.width(), button_width(ui, keep));
        Area place = rest.cut_top(button_height(ui, keep, Style::Note, rest.width()));
        keep_button(ui, state, side, place.cut_left(width), asked);
        ImGui::PopID();
    }
}

} // namespace ui
