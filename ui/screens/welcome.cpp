#include "ui/parts/camera_corner.h"
#include "ui/parts/frame.h"
#include "ui/parts/offers.h"
#include "ui/parts/sentences.h"
#include "ui/screens/all.h"
#include "ui/widgets/button.h"
#include "ui/widgets/pattern.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>
#include <vector>

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
std::vector<Offer> other_ways(const Ui& ui, const State& state)
{
    std::vector<Offer> offers{
        {ui.language.text(TextId::button_ways), TextId::button_ways, false, AskAccess{OpenWays{}}}, words_offer(ui)};
    if (state.desk_open)
        offers.push_back({ui.language.text(TextId::desk_title), TextId::desk_title, false, AskDesk{OpenDesk{}}});
    return offers;
}

/// What to do without a scanner; whoever came back here with both sides full wants to see them again.
std::vector<Offer> next_steps(const Ui& ui, const State& state)
{
    const auto offer = [&ui](TextId id, Action action) {
        return Offer{ui.language.text(id), id, false, std::move(action)};
    };
    if (state.pair)
        return {offer(TextId::button_compare, ShowPair{})};
    std::vector<Offer> steps{offer(TextId::button_choose_by_name, FindByName{})};
    if (state.by_aisle)
        steps.push_back(offer(TextId::find_by_aisle, ChooseAisle{}));
    return steps;
}

/// The two places for packages, side by side.
Block places(const Ui& ui, const State& state, const Frame& frame, Actions& asked)
{
    const float half = std::floor((frame.body.width() - ui.look.sizes.gap) / 2);
    const PlaceStyle style = place_style(ui, state, half, frame.body.height());
    return {place_height(ui, state, style, half),
            [&ui, &state, &asked, half, style](Area area) {
                place(ui, state, Side::Left, style, area.cut_left(half), asked);
                place(ui, state, Side::Right, style, area.cut_right(half), asked);
            },
            false, ui.look.sizes.gap};
}

/// The next steps in one line; the second where letters are not so large that a line holds only one.
Block next_step(const Ui& ui, const State& state, float width, Actions& asked)
{
    const float gap = ui.look.sizes.gap;
    auto steps = next_steps(ui, state);
    const float wide = std::min(width, button_width(ui, steps.front().words, Style::Text));
    if (steps.size() > 1 && wide + gap + button_width(ui, steps.back().words, Style::Text) > width)
        steps.pop_back();
    const float height = button_height(ui, steps.front().words, Style::Text, wide);
    return {height,
            [&ui, &asked, steps = std::move(steps), wide, gap](Area area) {
                for (std::size_t i = 0; i < steps.size(); ++i) {
                    const Area place = area.cut_left(i == 0 ? wide : button_width(ui, steps[i].words, Style::Text));
                    if (button(ui, steps[i].id, place, {Style::Text, false, false, Align::Centre}))
                        asked.push_back(steps[i].action);
                    area.cut_left(gap);
                }
            },
            false, gap};
}

/// All that stands on it, and which block holds the two places. `corner`: the width that the camera's picture takes.
struct Welcome {
    std::vector<Block> blocks;
    std::size_t places = 0;
};

Welcome welcome_of(const Ui& ui, const State& state, const Frame& frame, float corner, Actions& asked)
{
    const auto& sizes = ui.look.sizes;
    const float width = frame.body.width();
    Welcome all;
    auto& blocks = all.blocks;
    const auto add = [&](const std::string& words, Style style, float gap, float wide) {
        add_words(ui, words, style, style == Style::Headline ? Role::Heading : Role::Text, wide, gap, blocks);
    };
    add(ui.language.text(TextId::welcome_title), Style::Headline, 0, width - corner);
    blocks.back().with_next = false;
    // With both sides full the way back to them comes before what to do first: large letters make pages of it.
    const auto add_lead = [&](float wide) {
        add(ui.language.text(TextId::welcome_lead), Style::Text, sizes.unit, wide);
    };
    if (!state.pair)
        add_lead(width - corner);
    if (corner > 0)
        set_beside_camera(ui, state, width, blocks);
    all.places = blocks.size();
    blocks.push_back(places(ui, state, frame, asked));
    if (corner <= 0)
        blocks.push_back(next_step(ui, state, width, asked));
    if (state.pair)
        add_lead(width);
    if (!state.reader.empty())
        add(state.reader, Style::QuietNote, sizes.gap, width);
    add(ui.language.text(TextId::welcome_caution), Style::QuietNote, sizes.gap, width);
    if (!state.bundle.empty())
        add(state.bundle, Style::QuietNote, sizes.unit, width);
    // Beside the camera's picture room is short: all buttons stand in one place then.
    auto offers = corner > 0 ? next_steps(ui, state) : std::vector<Offer>{};
    std::ranges::move(other_ways(ui, state), std::back_inserter(offers));
    add_offers(ui, offers, width, blocks, asked);
    return all;
}

} // namespace

void welcome_screen(const Ui& ui, const State& state, Actions& asked)
{
    const Frame frame = frame_of(ui, state);
    const float corner = camera_corner_width(ui, state, frame.body.width());
    Welcome all = welcome_of(ui, state, frame, corner, asked);
    if (corner > 0 && height_of(all.blocks) > frame.body.height()) // words come first
        all = welcome_of(ui, state, frame, 0, asked);
    // The two places take what room is left, so that the screen is full and quiet.
    all.blocks[all.places].height += std::max(0.0F, frame.body.height() - height_of(all.blocks));
    const Paging paging = draw_page(all.blocks, frame.body, state.page);
    close_frame(ui, state, frame, paging, asked);
}

} // namespace ui
