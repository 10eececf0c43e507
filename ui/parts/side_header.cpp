#include "ui/parts/side_header.h"

#include "ui/parts/say_side.h"
#include "ui/widgets/button.h"
#include "ui/widgets/pattern.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

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
    return head.inset(2 * ui.look.sizes.unit, 0.75F * ui.look.sizes.unit);
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

float keep_width(const Ui& ui, Style style = Style::Note)
{
    return std::max(button_width(ui, ui.language.text(TextId::button_keep), style),
                    button_width(ui, ui.language.text(TextId::button_kept), style));
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
    return 0.75F * ui.look.sizes.unit;
}

/// The height of place, name and Keep button, with so much room for the words; all of it means the button below them.
float top_height(const Ui& ui, const State& state, Side side, float beside, float inner)
{
    const auto& words = state.pair->sides[index_of(side)];
    const float above = place_height(ui, words, beside - mark_room(ui)) +
                        text_height(ui, words.name, name_style(ui, state, beside), beside);
    return beside < inner ? std::max(above, ui.look.sizes.target) : above + ui.look.sizes.target + ui.look.sizes.unit;
}

/// The room for place and name beside the Keep button; all of it where the button has to stand below them: where a word
/// would break, or where so narrow a name takes more lines than the button saves.
float beside_keep(const Ui& ui, const State& state, float inner)
{
    const float beside = inner - keep_width(ui) - ui.look.sizes.unit;
    float with_beside = 0;
    float with_below = 0;
    for (const Side side : {Side::Left, Side::Right}) {
        const auto& words = state.pair->sides[index_of(side)];
        if (std::max(widest_word(ui, words.name, Style::Strong),
                     widest_word(ui, place_line(words), Style::Note) + mark_room(ui)) > beside)
            return inner;
        with_beside = std::max(with_beside, top_height(ui, state, side, beside, inner));
        with_below = std::max(with_below, top_height(ui, state, side, inner, inner));
    }
    return with_beside <= with_below ? beside : inner;
}

/// The name as a short head says it: that a side is kept must be seen there too.
std::string short_name(const Ui& ui, const State& state, Side side)
{
    const auto& held = state.sides[index_of(side)];
    const auto& name = state.pair->sides[index_of(side)].name;
    return held && held->kept ? name + " · " + ui.language.text(TextId::button_kept) : name;
}

/// Short heads name the sides on every page: one line each, in the largest letters that leave the page to the figures.
Style short_style(const Ui& ui, const State& state, float inner)
{
    for (const Style style : {Style::Strong, Style::Note})
        if (std::max(text_width(ui, short_name(ui, state, Side::Left), style),
                     text_width(ui, short_name(ui, state, Side::Right), style)) <= inner)
            return style;
    return Style::Bar;
}

float short_inner(const Ui& ui, float width)
{
    return width - strip_width(ui) - 4 * ui.look.sizes.unit - mark_room(ui);
}

float head_height(const Ui& ui, const State& state, Side side, float width, HeadSize size)
{
    const auto& words = state.pair->sides[index_of(side)];
    const float inner = width - strip_width(ui) - 4 * ui.look.sizes.unit;
    const float height = 2 * head_padding(ui);
    if (size == HeadSize::Short) { // all of it is touched
        const float beside = short_inner(ui, width);
        return std::max(height + text_height(ui, short_name(ui, state, side), short_style(ui, state, beside), beside),
                        ui.look.sizes.target);
    }
    const float beside = beside_keep(ui, state, inner);
    return height + top_height(ui, state, side, beside, inner) +
           text_height(ui, servings_and_net(ui, words, inner), Style::Note, inner);
}

/// Short heads stand one below the other where a word of a name is wider than half of the screen.
bool stacked(const Ui& ui, const State& state, float width, HeadSize size)
{
    const float inner = short_inner(ui, column_width(ui, width));
    const auto too_wide = [&](Side side) { return widest_word(ui, short_name(ui, state, side), Style::Bar) > inner; };
    return size == HeadSize::Short && (too_wide(Side::Left) || too_wide(Side::Right));
}

void keep_button(const Ui& ui, const State& state, Side side, Style style, const Area& area, Actions& asked)
{
    const auto& held = state.sides[index_of(side)];
    const bool kept = held && held->kept;
    if (button(ui, keep_words(ui, state, side), kept ? TextId::button_kept : TextId::button_keep, area,
               {style, kept, false, Align::Centre}))
        asked.push_back(ToggleKeep{side});
    say_side(ui, side, ui.notes.size() - 1);
}

/// The name, underlined while it is what changed last, and the area around it that opens its label.
void name_line(const Ui& ui, const State& state, Side side, const std::string& name, Style style, const Area& area,
               const Area& touch, Actions& asked)
{
    text(ui, name, style, area, Align::Left, Role::Heading);
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
        const Style style = short_style(ui, state, rest.width());
        const std::string name = short_name(ui, state, side);
        const float spare = rest.height() - text_height(ui, name, style, rest.width());
        rest.low.y += std::max(0.0F, std::floor(spare / 2));
        mark_area.low.y = rest.low.y;
        mark(ui, side, {mark_area.low.x + radius, mark_area.low.y + line_height(ui, style) / 2}, radius);
        name_line(ui, state, side, name, style, rest, area, asked);
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
    name_line(ui, state, side, words.name, style, top, touch, asked);
    keep_button(ui, state, side, Style::Note, keep.cut_top(sizes.target), asked);
    const std::size_t first_of_facts = ui.notes.size();
    text(ui, servings_and_net(ui, words, rest.width()), Style::Note, rest);
    say_side(ui, side, first_of_facts);
}

/// The lines of one side that the short head leaves out. What a package holds belongs to its servings.
std::vector<std::string> lines_of(const State& state, Side side, HeadFacts facts)
{
    const auto& words = state.pair->sides[index_of(side)];
    const bool net_first = state.basis == core::Basis::Package;
    std::vector<std::string> lines{facts == HeadFacts::Servings ? words.servings : place_line(words)};
    if (!words.net.empty() && net_first == (facts == HeadFacts::Servings))
        lines.push_back(words.net);
    return lines;
}

float facts_of_side(const Ui& ui, const State& state, Side side, float width, HeadFacts facts)
{
    float height = 0;
    for (const auto& line : lines_of(state, side, facts))
        height += text_height(ui, line, Style::Note, width - mark_room(ui));
    return height;
}

/// As with the short heads: one below the other where a word is wider than half of the screen, or where that takes
/// no more lines.
bool facts_stacked(const Ui& ui, const State& state, float width, HeadFacts facts)
{
    const float inner = column_width(ui, width) - 2 * ui.look.sizes.unit;
    float sum = 0;
    float most = 0;
    for (const Side side : {Side::Left, Side::Right}) {
        for (const auto& line : lines_of(state, side, facts))
            if (widest_word(ui, line, Style::Note) + mark_room(ui) > inner)
                return true;
        sum += facts_of_side(ui, state, side, width - 2 * ui.look.sizes.unit, facts);
        most = std::max(most, facts_of_side(ui, state, side, inner, facts));
    }
    return sum <= most;
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

std::vector<Block> fact_pieces(const Ui& ui, const State& state, Side side, float width, HeadFacts facts)
{
    std::vector<Block> pieces;
    const float inner = width - 2 * ui.look.sizes.unit - mark_room(ui);
    for (const auto& line : lines_of(state, side, facts)) {
        const bool marked = pieces.empty();
        pieces.push_back(
            {text_height(ui, line, Style::Note, inner),
             [&ui, line, side, marked](Area place) {
                 const float radius = 0.32F * mark_room(ui);
                 place = place.inset(ui.look.sizes.unit, 0);
                 if (marked)
                     mark(ui, side, {place.low.x + radius, place.low.y + line_height(ui, Style::Note) / 2}, radius);
                 place.cut_left(mark_room(ui));
                 const std::size_t first_note = ui.notes.size();
                 text(ui, line, Style::Note, place);
                 say_side(ui, side, first_note);
             },
             false, marked ? ui.look.sizes.unit : 0});
    }
    return pieces;
}

bool facts_part(const Ui& ui, const State& state, float width, HeadFacts facts)
{
    return facts_stacked(ui, state, width, facts) ||
           facts_height(ui, state, width, facts) > 0.3F * ui.look.sizes.height;
}

float facts_height(const Ui& ui, const State& state, float width, HeadFacts facts)
{
    const float unit = ui.look.sizes.unit;
    const bool stacked = facts_stacked(ui, state, width, facts);
    const float inner = (stacked ? width : column_width(ui, width)) - 2 * unit;
    const float left = facts_of_side(ui, state, Side::Left, inner, facts);
    const float right = facts_of_side(ui, state, Side::Right, inner, facts);
    return stacked ? left + right : std::max(left, right);
}

void draw_facts(const Ui& ui, const State& state, const Area& area, HeadFacts facts)
{
    const bool one_below_the_other = facts_stacked(ui, state, area.width(), facts);
    const float radius = 0.32F * mark_room(ui);
    Area left_over = area.inset(ui.look.sizes.unit, 0);
    for (const Side side : {Side::Left, Side::Right}) {
        Area place = column(ui, area, side).inset(ui.look.sizes.unit, 0);
        if (one_below_the_other)
            place = left_over.cut_top(facts_of_side(ui, state, side, left_over.width(), facts));
        mark(ui, side, {place.low.x + radius, place.low.y + line_height(ui, Style::Note) / 2}, radius);
        place.cut_left(mark_room(ui));
        const std::size_t first_note = ui.notes.size();
        for (const auto& line : lines_of(state, side, facts))
            place.cut_top(text(ui, line, Style::Note, place));
        say_side(ui, side, first_note);
    }
}

namespace {

/// Smaller letters where a word would be wider than half of the screen.
Style keeps_style(const Ui& ui, float half)
{
    const float room = half - 5 * ui.look.sizes.unit;
    const bool fits = std::max(widest_word(ui, ui.language.text(TextId::button_keep), Style::Note),
                               widest_word(ui, ui.language.text(TextId::button_kept), Style::Note)) <= room;
    return fits ? Style::Note : Style::Bar;
}

} // namespace

float keeps_height(const Ui& ui, const State& state, float width)
{
    const float half = column_width(ui, width) - 2 * ui.look.sizes.unit;
    const Style style = keeps_style(ui, half);
    return std::max(button_height(ui, keep_words(ui, state, Side::Left), style, half),
                    button_height(ui, keep_words(ui, state, Side::Right), style, half));
}

void keeps(const Ui& ui, const State& state, const Area& area, Actions& asked)
{
    for (const Side side : {Side::Left, Side::Right}) {
        ImGui::PushID(static_cast<int>(index_of(side)));
        Area place = column(ui, area, side).inset(ui.look.sizes.unit, 0);
        const Style style = keeps_style(ui, place.width());
        keep_button(ui, state, side, style, place.cut_left(std::min(place.width(), keep_width(ui, style))), asked);
        ImGui::PopID();
    }
}

} // namespace ui
