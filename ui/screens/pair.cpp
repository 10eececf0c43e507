#include "ui/parts/frame.h"
#include "ui/parts/offers.h"
#include "ui/parts/pair_table.h"
#include "ui/parts/sentences.h"
#include "ui/parts/side_header.h"
#include "ui/screens/all.h"
#include "ui/widgets/button.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <cmath>
#include <span>

namespace ui {
namespace {

/// The bases side by side, in letters that grow less if need be, and on as many lines as they need.
struct BasisBar {
    Style style = Style::Note;
    std::vector<std::size_t> starts; ///< the first basis of each line
    float height = 0;                ///< of one button
    float whole = 0;
    [[nodiscard]] bool one_line() const { return starts.size() == 1; }
};

float basis_gap(const Ui& ui)
{
    return 1.5F * ui.look.sizes.unit;
}

float basis_width(const Ui& ui, const BasisWords& basis, Style style, float width)
{
    return std::min(button_width(ui, basis.words, style), width);
}

BasisBar basis_bar(const Ui& ui, const PairWords& pair, float width)
{
    const float gap = basis_gap(ui);
    BasisBar bar;
    for (const Style style : {Style::Note, Style::Bar}) {
        bar.style = style;
        bar.starts.assign(1, 0);
        float used = 0;
        for (std::size_t i = 0; i < pair.bases.size(); ++i) {
            const float wanted = basis_width(ui, pair.bases[i], style, width);
            if (used > 0 && used + wanted > width) {
                bar.starts.push_back(i);
                used = 0;
            }
            used += wanted + gap;
        }
        if (bar.one_line())
            break;
    }
    for (const auto& basis : pair.bases)
        bar.height = std::max(bar.height, button_height(ui, basis.words, bar.style, width));
    bar.whole = static_cast<float>(bar.starts.size()) * (bar.height + gap) - gap;
    return bar;
}

/// One line of the bar; what room is left over makes the buttons wider, up to a point.
void draw_basis_line(const Ui& ui, const State& state, std::span<const BasisWords> bases, Style style, Area area,
                     Actions& asked)
{
    const float gap = basis_gap(ui);
    float spare = area.width() + gap;
    for (const auto& basis : bases)
        spare -= basis_width(ui, basis, style, area.width()) + gap;
    const float extra = std::min(spare / static_cast<float>(bases.size()), 6 * ui.look.sizes.unit);
    for (const auto& basis : bases) {
        const Area place = area.cut_left(basis_width(ui, basis, style, area.width()) + extra);
        if (button(ui, basis.words, basis.id, place, {style, state.basis == basis.basis, false, Align::Centre}))
            asked.push_back(basis.opens ? Action(OpenAmounts{}) : Action(ChooseBasis{basis.basis}));
        area.cut_left(gap);
    }
}

void draw_basis_bar(const Ui& ui, const State& state, const PairWords& pair, Area area, Actions& asked)
{
    const BasisBar bar = basis_bar(ui, pair, area.width());
    const std::span<const BasisWords> all(pair.bases);
    for (std::size_t line = 0; line < bar.starts.size(); ++line) {
        const std::size_t from = bar.starts[line];
        const std::size_t to = line + 1 < bar.starts.size() ? bar.starts[line + 1] : all.size();
        draw_basis_line(ui, state, all.subspan(from, to - from), bar.style, area.cut_top(bar.height), asked);
        area.cut_top(basis_gap(ui));
    }
}

void add_sentence(const Ui& ui, const std::string& words, float width, std::vector<Block>& blocks)
{
    add_words(ui, words, Style::Note, Role::Text, width, ui.look.sizes.unit, blocks);
}

/// What is said first stands before the bases, in two lines beside them where there is room, else above them.
struct Opening {
    float beside = 0; ///< the width of the sentence; 0: it stands above
    float sentence = 0;
    float height = 0;
};

Opening opening_of(const Ui& ui, const PairWords& pair, float width)
{
    const float gap = 1.5F * ui.look.sizes.unit;
    const BasisBar bar = basis_bar(ui, pair, width);
    Opening opening;
    float room = width;
    for (const auto& basis : pair.bases)
        room -= button_width(ui, basis.words, bar.style) + gap;
    room -= gap; // the last word must not run up to the buttons
    if (pair.first.empty()) {
        opening.height = bar.whole;
        return opening;
    }
    const auto& sentence = pair.first.front();
    if (bar.one_line() && room > widest_word(ui, sentence, Style::Note) &&
        text_height(ui, sentence, Style::Note, room) <= 2 * line_height(ui, Style::Note)) {
        opening.beside = room;
        opening.sentence = text_height(ui, sentence, Style::Note, room);
        opening.height = std::max(opening.sentence, bar.whole);
        return opening;
    }
    opening.sentence = text_height(ui, sentence, Style::Note, width);
    opening.height = opening.sentence + ui.look.sizes.unit + bar.whole;
    return opening;
}

void draw_opening(const Ui& ui, const State& state, const PairWords& pair, Area area, Actions& asked)
{
    const Opening opening = opening_of(ui, pair, area.width());
    if (opening.beside > 0) {
        Area words = area.cut_left(opening.beside);
        area.cut_left(1.5F * ui.look.sizes.unit);
        words.low.y += std::floor((words.height() - opening.sentence) / 2);
        text(ui, pair.first.front(), Style::Note, words);
    } else if (!pair.first.empty()) {
        text(ui, pair.first.front(), Style::Note, area.cut_top(opening.sentence));
        area.cut_top(ui.look.sizes.unit);
    }
    draw_basis_bar(ui, state, pair, area, asked);
}

/// What stands above the rows. Where the letters leave room, full heads, the first sentence and the bases on the first
/// page; else heads of one line and the bases, and the rest turns into pieces of the pages. Later pages have short
/// heads and the bases again, or in large letters at least a line that says which it is: a figure without it says
/// nothing.
struct Above {
    bool full = false;
    bool pieces =
        false; ///< letters so large that not even short heads leave room for a row: heads and bases are pieces
    float first = 0;
    float others = 0;
    float basis_again = 0;
};

Above above_of(const Ui& ui, const State& state, const Area& body)
{
    const float unit = ui.look.sizes.unit;
    const float width = body.width();
    Above above;
    const float heads = heads_height(ui, state, width, HeadSize::Short) + unit;
    above.first = heads_height(ui, state, width, HeadSize::Full) + opening_of(ui, *state.pair, width).height + 2 * unit;
    above.full = above.first < body.height() * 0.5F;
    if (!above.full)
        above.first = heads + basis_bar(ui, *state.pair, width).whole + unit;
    above.basis_again = above.full ? basis_bar(ui, *state.pair, width).whole : line_height(ui, Style::Bar);
    above.others = heads + above.basis_again + unit;
    return above;
}

/// Heads and bases among the pieces of the pages, where no page would hold a row beside them.
Above above_in_pieces(const Ui& ui)
{
    Above above;
    above.pieces = true;
    above.basis_again = line_height(ui, Style::Bar);
    above.first = above.others = above.basis_again + ui.look.sizes.unit;
    return above;
}

Block facts_block(const Ui& ui, const State& state, float width, HeadFacts facts)
{
    return {facts_height(ui, state, width, facts),
            [&ui, &state, facts](const Area& area) { draw_facts(ui, state, area, facts); }, false, ui.look.sizes.unit};
}

/// The facts of both sides, in a piece each where they stand one below the other.
void add_facts(const Ui& ui, const State& state, float width, HeadFacts facts, std::vector<Block>& blocks)
{
    if (!facts_part(ui, state, width, facts)) {
        blocks.push_back(facts_block(ui, state, width, facts));
        return;
    }
    for (const Side side : {Side::Left, Side::Right})
        for (auto& piece : fact_pieces(ui, state, side, width, facts))
            blocks.push_back(std::move(piece));
}

/// Short heads and bases as pieces of the pages.
void add_head_pieces(const Ui& ui, const State& state, float width, std::vector<Block>& blocks, Actions& asked)
{
    blocks.push_back({heads_height(ui, state, width, HeadSize::Short),
                      [&ui, &state, &asked](const Area& area) { heads(ui, state, area, HeadSize::Short, asked); },
                      false, 0});
    const BasisBar bar = basis_bar(ui, *state.pair, width);
    const std::span<const BasisWords> all(state.pair->bases);
    for (std::size_t line = 0; line < bar.starts.size(); ++line) {
        const std::size_t from = bar.starts[line];
        const std::size_t to = line + 1 < bar.starts.size() ? bar.starts[line + 1] : all.size();
        const auto own = all.subspan(from, to - from);
        blocks.push_back({bar.height,
                          [&ui, &state, &asked, own, style = bar.style](const Area& area) {
                              draw_basis_line(ui, state, own, style, area, asked);
                          },
                          false, basis_gap(ui)});
    }
}

/// Servings come before calories, as they are taught; but the first page must hold calories too.
void add_first_facts(const Ui& ui, const State& state, float width, float room, std::vector<Block>& blocks,
                     Block calories)
{
    const float unit = ui.look.sizes.unit;
    if (facts_part(ui, state, width, HeadFacts::Servings)) {
        add_facts(ui, state, width, HeadFacts::Servings, blocks);
        calories.gap = unit;
        blocks.push_back(std::move(calories));
        return;
    }
    Block servings = facts_block(ui, state, width, HeadFacts::Servings);
    float said = 0;
    for (const auto& block : blocks)
        said += block.height + unit;
    const bool fits = said + servings.height + unit + calories.height <= room;
    calories.gap = unit;
    blocks.push_back(fits ? servings : calories);
    blocks.push_back(fits ? calories : servings);
}

/// What stands behind the rows: each section under its heading.
void add_sections(const Ui& ui, const PairWords& pair, float width, std::vector<Block>& blocks)
{
    const float unit = ui.look.sizes.unit;
    for (const auto& section : pair.sections) {
        add_words(ui, section.heading, Style::Strong, Role::Heading, width, 2 * unit, blocks);
        for (const auto& sentence : section.sentences)
            add_words(ui, sentence, Style::Note, Role::Text, width, unit / 2, blocks);
    }
}

/// Behind all: the way to type prices, below what they say, to the view for a group, and to what the words mean.
void add_ways_on(const Ui& ui, float width, std::vector<Block>& blocks, Actions& asked)
{
    const auto& language = ui.language;
    add_offers(
        ui,
        {{language.text(TextId::button_prices), TextId::button_prices, false, OpenPrices{}},
         {language.text(TextId::button_group_view), TextId::button_group_view, false, AskAccess{OpenGroupView{}}},
         words_offer(ui)},
        width, blocks, asked);
}

std::vector<Block> blocks_of(const Ui& ui, const State& state, const Above& above, const Area& body, Actions& asked)
{
    const PairWords& pair = *state.pair;
    const float width = body.width();
    std::vector<Block> blocks;
    auto rows = table_blocks(ui, pair, width, asked);
    const bool calories_first = !pair.rows.empty() && pair.rows.front().nutrient == core::Nutrient::Calories;
    std::size_t taken = 0;
    // Whatever must be known before a figure is read stands before the first of them.
    const bool nothing_compared = state.comparison && state.comparison->why != core::Why::Comparable;
    const std::size_t before = nothing_compared ? pair.first.size() : std::min<std::size_t>(1, pair.first.size());
    if (above.pieces)
        add_head_pieces(ui, state, width, blocks, asked);
    if (!above.full) {
        for (std::size_t i = 0; i < before; ++i)
            add_sentence(ui, pair.first[i], width, blocks);
        if (calories_first && !rows.front().with_next) {
            add_first_facts(ui, state, width, body.height() - above.first, blocks, rows.front());
            taken = 1;
        } else
            add_facts(ui, state, width, HeadFacts::Servings, blocks);
    }
    for (std::size_t i = above.full ? 1 : before; i < pair.first.size(); ++i)
        add_sentence(ui, pair.first[i], width, blocks);
    for (std::size_t i = taken; i < rows.size(); ++i)
        blocks.push_back(std::move(rows[i]));
    add_sections(ui, pair, width, blocks);
    add_ways_on(ui, width, blocks, asked);
    if (!above.full) {
        add_facts(ui, state, width, HeadFacts::Rest, blocks);
        blocks.push_back({keeps_height(ui, state, width), [&](const Area& area) { keeps(ui, state, area, asked); },
                          false, ui.look.sizes.unit});
    }
    return blocks;
}

} // namespace

void pair_screen(const Ui& ui, const State& state, Actions& asked)
{
    if (!state.pair)
        return;
    const Frame frame = frame_of(ui, state);
    Area rest = frame.body;
    const float width = rest.width();
    const float unit = ui.look.sizes.unit;
    Above above = above_of(ui, state, rest);
    auto blocks = blocks_of(ui, state, above, rest, asked);
    if (!above.full && !pages_hold(blocks, rest.height() - above.first, rest.height() - above.others)) {
        above = above_in_pieces(ui);
        blocks = blocks_of(ui, state, above, rest, asked);
    }
    const Pages pages = deal_pages(blocks, rest.height() - above.first, rest.height() - above.others, state.page);
    const bool first = pages.paging.page == 0;
    const HeadSize size = first && above.full ? HeadSize::Full : HeadSize::Short;
    if (!above.pieces) {
        heads(ui, state, rest.cut_top(heads_height(ui, state, width, size)), size, asked);
        rest.cut_top(unit);
    }
    if (above.pieces)
        text(ui, basis_heading(*state.pair, state.basis), Style::Bar, rest.cut_top(above.basis_again));
    else if (first && above.full)
        draw_opening(ui, state, *state.pair, rest.cut_top(opening_of(ui, *state.pair, width).height), asked);
    else if (first)
        draw_basis_bar(ui, state, *state.pair, rest.cut_top(basis_bar(ui, *state.pair, width).whole), asked);
    else if (above.full && state.pair->shown_instead.empty())
        draw_basis_bar(ui, state, *state.pair, rest.cut_top(above.basis_again), asked);
    else // also where the button that was touched would name figures that are not these
        text(ui, basis_heading(*state.pair, state.basis), Style::Bar, rest.cut_top(above.basis_again));
    rest.cut_top(unit);
    draw_page(blocks, pages, rest);
    close_frame(ui, state, frame, pages.paging, asked);
}

} // namespace ui
