#include "ui/parts/frame.h"
#include "ui/parts/pair_table.h"
#include "ui/parts/side_header.h"
#include "ui/screens/all.h"
#include "ui/widgets/button.h"
#include "ui/widgets/text.h"

#include <cmath>

namespace ui {
namespace {

constexpr core::Basis bases[] = {core::Basis::Serving, core::Basis::Package, core::Basis::SameAmount};
constexpr TextId basis_texts[] = {TextId::basis_serving, TextId::basis_package, TextId::basis_same};

/// The three bases side by side where their words fit, else one below the other.
struct BasisBar {
    bool stacked = false;
    float height = 0; ///< of one button
    float whole = 0;
};

BasisBar basis_bar(const Ui& ui, const PairWords& pair, float width)
{
    const float gap = 1.5F * ui.look.sizes.unit;
    float sum = -gap;
    BasisBar bar;
    for (const auto& words : pair.bases)
        sum += button_width(ui, words, Style::Note) + gap;
    bar.stacked = sum > width;
    for (const auto& words : pair.bases)
        bar.height = std::max(bar.height, button_height(ui, words, Style::Note, width));
    bar.whole = bar.stacked ? 3 * bar.height + 2 * gap : bar.height;
    return bar;
}

void draw_basis_bar(const Ui& ui, const State& state, const PairWords& pair, Area area, Actions& asked)
{
    const BasisBar bar = basis_bar(ui, pair, area.width());
    const float gap = 1.5F * ui.look.sizes.unit;
    float spare = area.width() + gap;
    for (const auto& words : pair.bases)
        spare -= button_width(ui, words, Style::Note) + gap;
    const float extra = std::min(spare / 3, 6 * ui.look.sizes.unit);
    for (std::size_t i = 0; i < pair.bases.size(); ++i) {
        const float width = button_width(ui, pair.bases[i], Style::Note) + extra;
        const Area place = bar.stacked ? area.cut_top(bar.height) : area.cut_left(width);
        if (button(ui, pair.bases[i], basis_texts[i], place,
                   {Style::Note, state.basis == bases[i], false, Align::Centre}))
            asked.push_back(ChooseBasis{bases[i]});
        if (bar.stacked)
            area.cut_top(gap);
        else
            area.cut_left(gap);
    }
}

Block sentence(const Ui& ui, const std::string& words, float width)
{
    return {text_height(ui, words, Style::Note, width),
            [&ui, &words](const Area& area) { text(ui, words, Style::Note, area); }, false, ui.look.sizes.unit};
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
    for (const auto& words : pair.bases)
        room -= button_width(ui, words, Style::Note) + gap;
    const auto& sentence = pair.first.front();
    if (!bar.stacked && room > widest_word(ui, sentence, Style::Note) &&
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
        words.low.y += std::floor((words.height() - opening.sentence) / 2);
        text(ui, pair.first.front(), Style::Note, words);
    } else {
        text(ui, pair.first.front(), Style::Note, area.cut_top(opening.sentence));
        area.cut_top(ui.look.sizes.unit);
    }
    draw_basis_bar(ui, state, pair, area, asked);
}

/// Heads, first sentence and bases stand above the rows where that leaves a good part of the screen to them; with
/// large letters they are pieces of the first page like everything else.
struct Above {
    bool first = false;  ///< on the first page: full heads, sentence, bases
    bool others = false; ///< on the others: short heads
    float first_height = 0;
    float others_height = 0;
};

Above above_of(const Ui& ui, const State& state, const Area& body)
{
    const float unit = ui.look.sizes.unit;
    Above above;
    above.first_height = heads_height(ui, state, body.width(), HeadSize::Full) +
                         opening_of(ui, *state.pair, body.width()).height + 2 * unit;
    above.first = above.first_height < body.height() * 0.58F;
    above.others_height = heads_height(ui, state, body.width(), HeadSize::Short) + unit;
    above.others = above.others_height < body.height() * 0.3F;
    return above;
}

std::vector<Block> blocks_of(const Ui& ui, const State& state, const Above& above, float width, Actions& asked)
{
    const PairWords& pair = *state.pair;
    const float unit = ui.look.sizes.unit;
    std::vector<Block> blocks;
    if (!above.first) {
        blocks.push_back({heads_height(ui, state, width, HeadSize::Short),
                          [&](const Area& area) { heads(ui, state, area, HeadSize::Short, asked); }, false, 0});
        blocks.push_back(
            {head_rest_height(ui, state, width), [&](const Area& area) { head_rest(ui, state, area); }, false, unit});
        blocks.push_back(
            {keeps_height(ui, state, width), [&](const Area& area) { keeps(ui, state, area, asked); }, false, unit});
        blocks.push_back({opening_of(ui, pair, width).height,
                          [&](const Area& area) { draw_opening(ui, state, pair, area, asked); }, false, unit});
    }
    for (std::size_t i = 1; i < pair.first.size(); ++i)
        blocks.push_back(sentence(ui, pair.first[i], width));
    for (auto& block : table_blocks(ui, pair.rows, width))
        blocks.push_back(std::move(block));
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
    const Above above = above_of(ui, state, rest);
    const auto blocks = blocks_of(ui, state, above, width, asked);
    const Pages pages = deal_pages(blocks, rest.height() - (above.first ? above.first_height : 0),
                                   rest.height() - (above.others ? above.others_height : 0), state.page);
    const bool first = pages.paging.page == 0;
    if (first && above.first) {
        heads(ui, state, rest.cut_top(heads_height(ui, state, width, HeadSize::Full)), HeadSize::Full, asked);
        rest.cut_top(unit);
        draw_opening(ui, state, *state.pair, rest.cut_top(opening_of(ui, *state.pair, width).height), asked);
        rest.cut_top(unit);
    } else if (!first && above.others) {
        heads(ui, state, rest.cut_top(heads_height(ui, state, width, HeadSize::Short)), HeadSize::Short, asked);
        rest.cut_top(unit);
    }
    draw_page(blocks, pages, rest);
    close_frame(ui, state, frame, pages.paging, asked);
}

} // namespace ui
