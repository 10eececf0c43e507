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
#include <cstddef>
#include <iterator>
#include <span>
#include <string>
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

/// How many of the next steps stand in one line of that width: all, or the first where letters are that large.
std::size_t steps_in_line(const Ui& ui, const std::vector<Offer>& steps, float width)
{
    float wide = 0;
    for (const Offer& step : steps)
        wide += button_width(ui, step.words, Style::Text) + (wide > 0 ? ui.look.sizes.gap : 0);
    return wide <= width ? steps.size() : 1;
}

/// Next steps in one line.
Block next_step(const Ui& ui, std::vector<Offer> steps, float width, Actions& asked)
{
    const float gap = ui.look.sizes.gap;
    const float wide = std::min(width, button_width(ui, steps.front().words, Style::Text));
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

/// How closely its words and buttons stand.
struct Arrangement {
    float corner = 0;     ///< the width that the camera's picture takes
    bool one_row = false; ///< all buttons in one place
    bool close = false;   ///< the notes as one paragraph, and no button for what a button of the bar does
};

void add_notes(const Ui& ui, const State& state, const Arrangement& arrangement, float width,
               std::vector<Block>& blocks)
{
    const auto& sizes = ui.look.sizes;
    const auto add = [&](const std::string& words, float gap) {
        if (!words.empty())
            add_words(ui, words, Style::QuietNote, Role::Text, width, gap, blocks);
    };
    const auto& caution = ui.language.text(TextId::welcome_caution);
    if (arrangement.close) {
        const std::string camera = state.reader.empty() ? "" : state.reader + " ";
        add(camera + caution + (state.bundle.empty() ? "" : " " + state.bundle), sizes.gap);
        return;
    }
    add(state.reader, sizes.gap);
    add(caution, sizes.gap);
    add(state.bundle, sizes.unit);
}

/// The next steps, as many of them as stand above the notes first.
struct Steps {
    std::vector<Offer> above;
    std::vector<Offer> below;
};

Steps steps_of(const Ui& ui, const State& state, const Arrangement& arrangement, float width)
{
    auto steps = next_steps(ui, state);
    if (arrangement.one_row)
        return {{}, std::move(steps)};
    const auto above = static_cast<std::ptrdiff_t>(steps_in_line(ui, steps, width));
    const std::vector<Offer> below(steps.begin() + above, steps.end());
    steps.erase(steps.begin() + above, steps.end());
    return {std::move(steps), below};
}

/// The buttons below the notes: next steps, then the other ways.
std::vector<Offer> last_offers(const Ui& ui, const State& state, const Arrangement& arrangement,
                               std::vector<Offer> offers)
{
    if (arrangement.close)
        std::erase_if(offers, [](const Offer& offer) { return offer.id == TextId::button_choose_by_name; });
    std::ranges::move(other_ways(ui, state), std::back_inserter(offers));
    return offers;
}

/// All that stands on it, and which block holds the two places.
struct Welcome {
    std::vector<Block> blocks;
    std::size_t places = 0;
};

Welcome welcome_of(const Ui& ui, const State& state, const Frame& frame, const Arrangement& arrangement, Actions& asked)
{
    const float width = frame.body.width();
    const float beside_camera = width - arrangement.corner;
    Welcome all;
    auto& blocks = all.blocks;
    add_words(ui, ui.language.text(TextId::welcome_title), Style::Headline, Role::Heading, beside_camera, 0, blocks);
    blocks.back().with_next = false;
    // With both sides full the way back to them comes before what to do first: large letters make pages of it.
    const auto add_lead = [&](float wide) {
        add_words(ui, ui.language.text(TextId::welcome_lead), Style::Text, Role::Text, wide, ui.look.sizes.unit,
                  blocks);
    };
    if (!state.pair)
        add_lead(beside_camera);
    if (arrangement.corner > 0)
        set_beside_camera(ui, state, width, blocks);
    all.places = blocks.size();
    blocks.push_back(places(ui, state, frame, asked));
    auto [above, below] = steps_of(ui, state, arrangement, width);
    if (!above.empty())
        blocks.push_back(next_step(ui, std::move(above), width, asked));
    if (state.pair)
        add_lead(width);
    add_notes(ui, state, arrangement, width, blocks);
    add_offers(ui, last_offers(ui, state, arrangement, std::move(below)), width, blocks, asked);
    return all;
}

/// The first arrangement that fits one page, closer ones last, and those beside the camera's picture first; where none
/// fits, words come before the picture.
Welcome welcome_that_fits(const Ui& ui, const State& state, const Frame& frame, Actions& asked)
{
    constexpr float hopeless = 2; // pages: the closest arrangement does not save that much
    const float corner = camera_corner_width(ui, state, frame.body.width());
    const Arrangement arrangements[] = {
        {corner, true, false}, {corner, true, true}, {0, false, false}, {0, true, false}, {0, true, true}};
    for (const Arrangement& arrangement : std::span(arrangements).subspan(corner > 0 ? 0 : 2)) {
        Welcome all = welcome_of(ui, state, frame, arrangement, asked);
        const float height = height_of(all.blocks);
        if (height <= frame.body.height())
            return all;
        if (height > hopeless * frame.body.height())
            break;
    }
    return welcome_of(ui, state, frame, {}, asked);
}

} // namespace

void welcome_screen(const Ui& ui, const State& state, Actions& asked)
{
    const Frame frame = frame_of(ui, state);
    Welcome all = welcome_that_fits(ui, state, frame, asked);
    // The two places take what room is left, so that the screen is full and quiet.
    all.blocks[all.places].height += std::max(0.0F, frame.body.height() - height_of(all.blocks));
    const Paging paging = draw_page(all.blocks, frame.body, state.page);
    close_frame(ui, state, frame, paging, asked);
}

} // namespace ui
