#include "ui/parts/frame.h"
#include "ui/parts/offers.h"
#include "ui/parts/sentences.h"
#include "ui/screens/all.h"
#include "ui/widgets/button.h"
#include "ui/widgets/pattern.h"
#include "ui/widgets/text.h"

#include <cmath>

namespace ui {
namespace {

/// The letters in a place: smaller ones where the large would not fit a page.
struct PlaceStyle {
    Style name = Style::Name;
    Style note = Style::QuietNote;
};

/// The room beside the words of a place; hardly any under letters as large as small glass asks for.
float place_edge(const Ui& ui)
{
    return (ui.look.sizes.crowded_bar() ? 1 : 3) * ui.look.sizes.unit;
}

/// A place for one package: the side's pattern along its outer edge, its mark, and what it waits for.
void place(const Ui& ui, const State& state, Side side, PlaceStyle style, const Area& area, Actions& asked)
{
    const auto& sizes = ui.look.sizes;
    const auto& colours = colours_of(ui, side);
    canvas().AddRectFilled(area.low, area.high, colours.tint);
    Area rest = area;
    const float strip = 3 * sizes.unit;
    pattern(ui, side, side == Side::Left ? rest.cut_left(strip) : rest.cut_right(strip));
    rest = rest.inset(place_edge(ui), 2 * sizes.unit);
    const float radius = 0.3F * line_height(ui, style.note);
    Area first = rest.cut_top(line_height(ui, style.note));
    mark(ui, side, {first.low.x + radius, (first.low.y + first.high.y) / 2}, radius);
    first.cut_left(3 * radius);
    text_in(ui, ui.language.text(side == Side::Left ? TextId::left : TextId::right), style.note, first, Align::Left,
            Role::Text, colours.hue);
    const auto& held = state.sides[index_of(side)];
    const auto& words = held ? held->product.name
                             : ui.language.text(side == Side::Left ? TextId::welcome_first : TextId::welcome_second);
    rest.cut_top(text(ui, words, style.name, rest, Align::Left, Role::Heading));
    if (!held) {
        text(ui, ui.language.text(TextId::welcome_waiting), style.note, rest);
        return;
    }
    ImGui::PushID(static_cast<int>(index_of(side)));
    if (button(ui, TextId::button_open_label, area, {Style::Name, false, true, Align::Left}))
        asked.push_back(OpenLabel{side});
    ImGui::PopID();
}

float place_height(const Ui& ui, const State& state, PlaceStyle style, float width)
{
    const auto& sizes = ui.look.sizes;
    const float inner = width - 3 * sizes.unit - 2 * place_edge(ui);
    float height = 0;
    for (const Side side : {Side::Left, Side::Right}) {
        const auto& held = state.sides[index_of(side)];
        const auto& words = held
                                ? held->product.name
                                : ui.language.text(side == Side::Left ? TextId::welcome_first : TextId::welcome_second);
        height = std::max(height, text_height(ui, words, style.name, inner));
    }
    return height + line_height(ui, style.note) +
           text_height(ui, ui.language.text(TextId::welcome_waiting), style.note, inner) + 6 * sizes.unit;
}

/// Whether every word of both places is narrower than one of them.
bool words_fit(const Ui& ui, const State& state, PlaceStyle style, float width)
{
    const float inner = width - 3 * ui.look.sizes.unit - 2 * place_edge(ui);
    float widest = widest_word(ui, ui.language.text(TextId::welcome_waiting), style.note);
    for (const Side side : {Side::Left, Side::Right}) {
        const auto& held = state.sides[index_of(side)];
        const auto& words = held
                                ? held->product.name
                                : ui.language.text(side == Side::Left ? TextId::welcome_first : TextId::welcome_second);
        widest = std::max(widest, widest_word(ui, words, style.name));
    }
    return widest <= inner;
}

PlaceStyle place_style(const Ui& ui, const State& state, float width, float page_height)
{
    const PlaceStyle large;
    if (words_fit(ui, state, large, width) && place_height(ui, state, large, width) <= page_height)
        return large;
    return {Style::Bar, Style::Bar};
}

/// The ways to see and hear, to what words mean, and to the leader desk: last, and quieter than what shoppers are asked
/// to do.
void add_other_ways(const Ui& ui, const State& state, float width, std::vector<Block>& blocks, Actions& asked)
{
    std::vector<Offer> offers{
        {ui.language.text(TextId::button_ways), TextId::button_ways, false, AskAccess{OpenWays{}}}, words_offer(ui)};
    if (state.desk_open)
        offers.push_back({ui.language.text(TextId::desk_title), TextId::desk_title, false, AskDesk{OpenDesk{}}});
    add_offers(ui, offers, width, blocks, asked);
}

} // namespace

void welcome_screen(const Ui& ui, const State& state, Actions& asked)
{
    const auto& sizes = ui.look.sizes;
    const Frame frame = frame_of(ui, state);
    const float width = frame.body.width();
    const float half = std::floor((width - sizes.gap) / 2);
    // Whoever came back here with both sides full wants to see them again.
    const TextId next = state.pair ? TextId::button_compare : TextId::button_choose_by_name;
    const Action wanted = state.pair ? Action(ShowPair{}) : Action(FindByName{});
    const auto& next_words = ui.language.text(next);
    std::vector<Block> blocks;
    const auto add = [&](const std::string& words, Style style, float gap) {
        add_words(ui, words, style, style == Style::Headline ? Role::Heading : Role::Text, width, gap, blocks);
    };
    add(ui.language.text(TextId::welcome_title), Style::Headline, 0);
    blocks.back().with_next = false;
    // With both sides full the way back to them comes before what to do first: large letters make pages of it.
    const auto add_lead = [&] { add(ui.language.text(TextId::welcome_lead), Style::Text, sizes.unit); };
    if (!state.pair)
        add_lead();
    const std::size_t places = blocks.size();
    const PlaceStyle style = place_style(ui, state, half, frame.body.height());
    blocks.push_back({place_height(ui, state, style, half),
                      [&ui, &state, &asked, half, style](Area area) {
                          place(ui, state, Side::Left, style, area.cut_left(half), asked);
                          place(ui, state, Side::Right, style, area.cut_right(half), asked);
                      },
                      false, sizes.gap});
    const float wide = std::min(width, button_width(ui, next_words, Style::Text));
    const float aisle = button_width(ui, ui.language.text(TextId::find_by_aisle), Style::Text);
    // The other way to choose stands beside it, where letters are not so large that a line holds only one.
    const bool by_aisle = !state.pair && state.by_aisle && wide + sizes.gap + aisle <= width;
    blocks.push_back({button_height(ui, next_words, Style::Text, wide),
                      [&ui, &asked, wide, aisle, by_aisle, next, &wanted, gap = sizes.gap](Area area) {
                          if (button(ui, next, area.cut_left(wide), {Style::Text, false, false, Align::Centre}))
                              asked.push_back(wanted);
                          area.cut_left(gap);
                          if (by_aisle && button(ui, TextId::find_by_aisle, area.cut_left(aisle),
                                                 {Style::Text, false, false, Align::Centre}))
                              asked.push_back(ChooseAisle{});
                      },
                      false, sizes.gap});
    if (state.pair)
        add_lead();
    if (!state.reader.empty())
        add(state.reader, Style::QuietNote, sizes.gap);
    add(ui.language.text(TextId::welcome_caution), Style::QuietNote, sizes.gap);
    if (!state.bundle.empty())
        add(state.bundle, Style::QuietNote, sizes.unit);
    add_other_ways(ui, state, width, blocks, asked);
    // The two places take what room is left, so that the screen is full and quiet.
    float used = 0;
    for (std::size_t i = 0; i < blocks.size(); ++i)
        used += blocks[i].height + (i > 0 ? blocks[i].gap : 0);
    blocks[places].height += std::max(0.0F, frame.body.height() - used);
    const Paging paging = draw_page(blocks, frame.body, state.page);
    close_frame(ui, state, frame, paging, asked);
}

} // namespace ui
