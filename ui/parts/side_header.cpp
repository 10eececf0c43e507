#include "ui/parts/side_header.h"

#include "ui/widgets/button.h"
#include "ui/widgets/pattern.h"
#include "ui/widgets/text.h"

#include <algorithm>
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
    return head.inset(2 * ui.look.sizes.unit, ui.look.sizes.unit);
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

/// Servings and net quantity, in one line where they fit beside each other.
std::string servings_and_net(const Ui& ui, const SideWords& words, float width)
{
    if (words.net.empty())
        return words.servings;
    const std::string one_line = words.servings + " · " + words.net;
    return text_width(ui, one_line, Style::Note) <= width ? one_line : words.servings + "\n" + words.net;
}

/// Large where both names then stay on one line.
Style name_style(const Ui& ui, const State& state, float inner)
{
    for (const auto& side : state.pair->sides)
        if (text_width(ui, side.name, Style::Name) > inner)
            return Style::Strong;
    return Style::Name;
}

float head_padding(const Ui& ui)
{
    return ui.look.sizes.unit;
}

/// The room for place and name beside the Keep button; all of it where the button has to stand below them.
float beside_keep(const Ui& ui, const State& state, float inner)
{
    const float beside = inner - keep_width(ui) - ui.look.sizes.unit;
    for (const auto& side : state.pair->sides)
        if (std::max(widest_word(ui, side.name, Style::Strong),
                     widest_word(ui, place_line(side), Style::Note) + mark_room(ui)) > beside ||
            beside < inner * 0.5F)
            return inner;
    return beside;
}

float head_height(const Ui& ui, const State& state, Side side, float width, HeadSize size)
{
    const auto& words = state.pair->sides[index_of(side)];
    const float inner = width - strip_width(ui) - 4 * ui.look.sizes.unit;
    const float height = 2 * head_padding(ui);
    if (size == HeadSize::Short) // all of it is touched
        return std::max(height + text_height(ui, words.name, Style::Strong, inner - mark_room(ui)),
                        ui.look.sizes.target);
    const float beside = beside_keep(ui, state, inner);
    const float below = beside < inner ? 0 : ui.look.sizes.target + ui.look.sizes.unit;
    const float top = place_height(ui, words, beside - mark_room(ui)) +
                      text_height(ui, words.name, name_style(ui, state, beside), beside);
    return height + below + std::max(top, beside < inner ? ui.look.sizes.target : 0) +
           text_height(ui, servings_and_net(ui, words, inner), Style::Note, inner);
}

/// Short heads stand one below the other where a word of a name is wider than half of the screen.
bool stacked(const Ui& ui, const State& state, float width, HeadSize size)
{
    const float inner = column_width(ui, width) - strip_width(ui) - 4 * ui.look.sizes.unit - mark_room(ui);
    const auto too_wide = [&](const SideWords& side) { return widest_word(ui, side.name, Style::Strong) > inner; };
    return size == HeadSize::Short && std::ranges::any_of(state.pair->sides, too_wide);
}

void keep_button(const Ui& ui, const State& state, Side side, const Area& area, Actions& asked)
{
    const auto& held = state.sides[index_of(side)];
    const bool kept = held && held->kept;
    if (button(ui, keep_words(ui, state, side), kept ? TextId::button_kept : TextId::button_keep, area,
               {Style::Note, kept, false, Align::Centre}))
        asked.push_back(ToggleKeep{side});
}

/// The name, underlined while it is what changed last, and the area around it that opens its label.
void name_line(const Ui& ui, const State& state, Side side, Style style, const Area& area, const Area& touch,
               Actions& asked)
{
    text(ui, state.pair->sides[index_of(side)].name, style, area, Align::Left, Role::Heading);
    const Note drawn = ui.notes.back();
    if (button(ui, ui.language.text(TextId::button_open_label), TextId::button_open_label, touch,
               {style, false, true, Align::Left}))
        asked.push_back(OpenLabel{side});
    if (state.newest == side) {
        const float y = drawn.high.y - ui.look.sizes.line;
        canvas().AddLine({drawn.low.x, y}, {drawn.high.x, y}, ui.look.theme.ink, 2 * ui.look.sizes.line);
    }
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
        const float spare = rest.height() - text_height(ui, words.name, Style::Strong, rest.width());
        rest.low.y += std::max(0.0F, std::floor(spare / 2));
        mark_area.low.y = rest.low.y;
        mark(ui, side, {mark_area.low.x + radius, mark_area.low.y + line_height(ui, Style::Strong) / 2}, radius);
        name_line(ui, state, side, Style::Strong, rest, area, asked);
        return;
    }
    const float beside = beside_keep(ui, state, rest.width());
    const bool keep_beside = beside < rest.width();
    const float place = place_height(ui, words, beside - mark_room(ui));
    const Style style = name_style(ui, state, beside);
    const float name = text_height(ui, words.name, style, beside);
    Area top = rest.cut_top(std::max(place + name, keep_beside ? sizes.target : 0));
    Area keep = keep_beside ? top.cut_right(keep_width(ui)) : rest.cut_bottom(sizes.target);
    top.high.x = top.low.x + beside;
    keep.high.x = keep.low.x + keep_width(ui);
    const Area touch = top;
    Area first = top.cut_top(place);
    mark(ui, side, {first.low.x + radius, first.low.y + line_height(ui, Style::Note) / 2}, radius);
    first.cut_left(mark_room(ui));
    text_in(ui, place_line(words), Style::Note, first, Align::Left, Role::Text, colours.hue);
    name_line(ui, state, side, style, top, touch, asked);
    keep_button(ui, state, side, keep.cut_top(sizes.target), asked);
    text(ui, servings_and_net(ui, words, rest.width()), Style::Note, rest);
}

/// What the short head leaves out, one side of it.
float rest_of_head(const Ui& ui, const State& state, Side side, float width)
{
    const auto& words = state.pair->sides[index_of(side)];
    float height = text_height(ui, place_line(words), Style::Note, width - mark_room(ui)) +
                   text_height(ui, words.servings, Style::Note, width);
    if (!words.net.empty())
        height += text_height(ui, words.net, Style::QuietNote, width);
    return height;
}

/// As with the short heads: one below the other where a word is wider than half of the screen.
bool rests_stacked(const Ui& ui, const State& state, float width)
{
    const float inner = column_width(ui, width) - 2 * ui.look.sizes.unit;
    const auto too_wide = [&](const SideWords& side) {
        return std::max(widest_word(ui, place_line(side), Style::Note) + mark_room(ui),
                        widest_word(ui, side.servings + " " + side.net, Style::Note)) > inner;
    };
    return std::ranges::any_of(state.pair->sides, too_wide);
}

} // namespace

float heads_height(const Ui& ui, const State& state, float width, HeadSize size)
{
    if (stacked(ui, state, width, size))
        return head_height(ui, state, Side::Left, width, size) + ui.look.sizes.unit +
               head_height(ui, state, Side::Right, width, size);
    const float half = column_width(ui, width);
    return std::max(head_height(ui, state, Side::Left, half, size), head_height(ui, state, Side::Right, half, size));
}

void heads(const Ui& ui, const State& state, const Area& area, HeadSize size, Actions& asked)
{
    const bool one_below_the_other = stacked(ui, state, area.width(), size);
    Area rest = area;
    for (const Side side : {Side::Left, Side::Right}) {
        Area place = column(ui, area, side);
        if (one_below_the_other) {
            place = rest.cut_top(head_height(ui, state, side, area.width(), size));
            rest.cut_top(ui.look.sizes.unit);
        }
        ImGui::PushID(static_cast<int>(index_of(side)));
        head(ui, state, side, place, size, asked);
        ImGui::PopID();
    }
}

float head_rest_height(const Ui& ui, const State& state, float width)
{
    if (rests_stacked(ui, state, width)) {
        const float whole = width - 2 * ui.look.sizes.unit;
        return rest_of_head(ui, state, Side::Left, whole) + ui.look.sizes.unit +
               rest_of_head(ui, state, Side::Right, whole);
    }
    const float half = column_width(ui, width) - 2 * ui.look.sizes.unit;
    return std::max(rest_of_head(ui, state, Side::Left, half), rest_of_head(ui, state, Side::Right, half));
}

void head_rest(const Ui& ui, const State& state, const Area& area)
{
    const bool one_below_the_other = rests_stacked(ui, state, area.width());
    Area left_over = area.inset(ui.look.sizes.unit, 0);
    for (const Side side : {Side::Left, Side::Right}) {
        const auto& words = state.pair->sides[index_of(side)];
        Area rest = column(ui, area, side).inset(ui.look.sizes.unit, 0);
        if (one_below_the_other) {
            rest = left_over.cut_top(rest_of_head(ui, state, side, left_over.width()));
            left_over.cut_top(ui.look.sizes.unit);
        }
        Area first = rest.cut_top(text_height(ui, place_line(words), Style::Note, rest.width() - mark_room(ui)));
        const float radius = 0.32F * mark_room(ui);
        mark(ui, side, {first.low.x + radius, first.low.y + line_height(ui, Style::Note) / 2}, radius);
        first.cut_left(mark_room(ui));
        text_in(ui, place_line(words), Style::Note, first, Align::Left, Role::Text, colours_of(ui, side).hue);
        rest.cut_top(text(ui, words.servings, Style::Note, rest));
        if (!words.net.empty())
            text(ui, words.net, Style::QuietNote, rest);
    }
}

float keeps_height(const Ui& ui, const State& state, float width)
{
    const float half = column_width(ui, width) - 2 * ui.look.sizes.unit;
    return std::max(button_height(ui, keep_words(ui, state, Side::Left), Style::Note, half),
                    button_height(ui, keep_words(ui, state, Side::Right), Style::Note, half));
}

void keeps(const Ui& ui, const State& state, const Area& area, Actions& asked)
{
    for (const Side side : {Side::Left, Side::Right}) {
        ImGui::PushID(static_cast<int>(index_of(side)));
        Area place = column(ui, area, side).inset(ui.look.sizes.unit, 0);
        keep_button(ui, state, side, place.cut_left(std::min(place.width(), keep_width(ui))), asked);
        ImGui::PopID();
    }
}

} // namespace ui
