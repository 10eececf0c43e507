#include "ui/parts/frame.h"
#include "ui/parts/offers.h"
#include "ui/parts/sentences.h"
#include "ui/screens/all.h"

#include <algorithm>
#include <utility>

namespace ui {
namespace {

std::vector<Offer> other_bases(const State& state)
{
    std::vector<Offer> choices;
    for (const auto& basis : state.amounts->bases)
        choices.push_back({basis.words, basis.id, state.basis == basis.basis, ChooseBasis{basis.basis}});
    return choices;
}

std::vector<Offer> kinds_of(const Ui& ui, const State& state)
{
    std::vector<Offer> choices;
    for (const auto& kind : state.amounts->kinds)
        choices.push_back({ui.language.text(kind.id), kind.id, state.basis == core::Basis::MyAmount && kind.chosen,
                           ChooseMyAmount{kind.amount}});
    return choices;
}

std::vector<Offer> steps_of(const Ui& ui, const State& state)
{
    const auto& amounts = *state.amounts;
    std::vector<Offer> choices;
    for (const auto& [next, id] :
         {std::pair{amounts.fewer, TextId::amounts_fewer}, std::pair{amounts.more, TextId::amounts_more}})
        choices.push_back({ui.language.text(id), id, false, ChooseMyAmount{next.value_or(amounts.amount)}});
    return choices;
}

} // namespace

void amounts_screen(const Ui& ui, const State& state, Actions& asked)
{
    if (!state.amounts)
        return;
    const Frame frame = frame_of(ui, state);
    const float width = frame.body.width();
    const float gap = ui.look.sizes.gap;
    std::vector<Block> blocks;
    add_words(ui, ui.language.text(TextId::amounts_title), Style::Strong, Role::Heading, width, 0, blocks);
    add_words(ui, ui.language.text(TextId::amounts_lead), Style::Note, Role::Text, width, gap, blocks);
    add_offers(ui, other_bases(state), width, blocks, asked);
    add_offers(ui, kinds_of(ui, state), width, blocks, asked);
    add_words(ui, state.amounts->words, Style::Figure, Role::Figure, width, gap, blocks);
    add_offers(ui, steps_of(ui, state), width, blocks, asked);
    add_offers(ui, {{ui.language.text(TextId::amounts_show), TextId::amounts_show, false, ShowPair{}}, words_offer(ui)},
               width, blocks, asked);
    const Paging paging = draw_page(blocks, frame.body, state.page);
    close_frame(ui, state, frame, paging, asked);
}

} // namespace ui
