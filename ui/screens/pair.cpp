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

/// Heads, first sentence and bases stand above the pages where that leaves most of the screen to the rows.
bool all_fits_above(const Ui& ui, const State& state, const Area& body)
{
    const float above = heads_height(ui, state, body.width(), HeadSize::Full) +
                        text_height(ui, state.pair->first.front(), Style::Text, body.width()) +
                        basis_bar(ui, *state.pair, body.width()).whole + 3 * ui.look.sizes.unit;
    return above < body.height() * 0.55F;
}

} // namespace

void pair_screen(const Ui& ui, const State& state, Actions& asked)
{
    if (!state.pair)
        return;
    const PairWords& pair = *state.pair;
    const auto& sizes = ui.look.sizes;
    const Frame frame = frame_of(ui, state);
    Area rest = frame.body;
    const float width = rest.width();
    const bool roomy = all_fits_above(ui, state, rest);
    const HeadSize head = roomy ? HeadSize::Full : HeadSize::Short;
    heads(ui, state, rest.cut_top(heads_height(ui, state, width, head)), head, asked);
    rest.cut_top(sizes.unit);

    std::vector<Block> blocks;
    std::size_t said = 0;
    if (roomy) {
        rest.cut_top(text(ui, pair.first[said++], Style::Text, rest));
        rest.cut_top(sizes.unit);
        draw_basis_bar(ui, state, pair, rest.cut_top(basis_bar(ui, pair, width).whole), asked);
        rest.cut_top(sizes.unit);
    } else
        blocks.push_back({head_rest_height(ui, state, width),
                          [&](const Area& area) { head_rest(ui, state, area, asked); }, false, sizes.unit});
    for (; said < pair.first.size(); ++said)
        blocks.push_back(sentence(ui, pair.first[said], width));
    if (!roomy)
        blocks.push_back({basis_bar(ui, pair, width).whole,
                          [&](const Area& area) { draw_basis_bar(ui, state, pair, area, asked); }, false,
                          2 * sizes.unit});
    for (auto& block : table_blocks(ui, pair.rows, width))
        blocks.push_back(std::move(block));
    const Paging paging = draw_page(blocks, rest, state.page);
    close_frame(ui, state, frame, paging, asked);
}

} // namespace ui
