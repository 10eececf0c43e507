#include "ui/parts/frame.h"
#include "ui/parts/sentences.h"
#include "ui/screens/all.h"
#include "ui/widgets/button.h"

#include <algorithm>
#include <functional>
#include <utility>

namespace ui {
namespace {

/// A button of a row that takes as many lines as it needs.
struct Choice {
    std::string words;
    TextId id;
    bool chosen;
    Action action;
};

void draw_choices(const Ui& ui, const std::vector<Choice>& line, Area area, Actions& asked)
{
    const float gap = 1.5F * ui.look.sizes.unit;
    const float width = area.width();
    for (const auto& choice : line) {
        const Area place = area.cut_left(std::min(width, button_width(ui, choice.words, Style::Text)));
        if (button(ui, choice.words, choice.id, place, {Style::Text, choice.chosen, false, Align::Centre}))
            asked.push_back(choice.action);
        area.cut_left(gap);
    }
}

void add_choices(const Ui& ui, const std::vector<Choice>& choices, float width, std::vector<Block>& blocks,
                 Actions& asked)
{
    const float gap = 1.5F * ui.look.sizes.unit;
    std::vector<std::vector<Choice>> lines;
    float used = 0;
    for (const auto& choice : choices) {
        const float wanted = std::min(width, button_width(ui, choice.words, Style::Text));
        if (lines.empty() || used + wanted > width) {
            lines.emplace_back();
            used = 0;
        }
        lines.back().push_back(choice);
        used += wanted + gap;
    }
    for (auto& line : lines) {
        float height = 0;
        for (const auto& choice : line)
            height = std::max(height, button_height(ui, choice.words, Style::Text, width));
        blocks.push_back(
            {height, [&ui, &asked, line = std::move(line)](const Area& area) { draw_choices(ui, line, area, asked); },
             false, ui.look.sizes.gap});
    }
}

std::vector<Choice> other_bases(const State& state)
{
    std::vector<Choice> choices;
    for (const auto& basis : state.amounts->bases)
        choices.push_back({basis.words, basis.id, state.basis == basis.basis, ChooseBasis{basis.basis}});
    return choices;
}

std::vector<Choice> kinds_of(const Ui& ui, const State& state)
{
    std::vector<Choice> choices;
    for (const auto& kind : state.amounts->kinds)
        choices.push_back({ui.language.text(kind.id), kind.id, state.basis == core::Basis::MyAmount && kind.chosen,
                           ChooseMyAmount{kind.amount}});
    return choices;
}

std::vector<Choice> steps_of(const Ui& ui, const State& state)
{
    const auto& amounts = *state.amounts;
    std::vector<Choice> choices;
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
    add_choices(ui, other_bases(state), width, blocks, asked);
    add_choices(ui, kinds_of(ui, state), width, blocks, asked);
    add_words(ui, state.amounts->words, Style::Figure, Role::Figure, width, gap, blocks);
    add_choices(ui, steps_of(ui, state), width, blocks, asked);
    add_choices(ui, {{ui.language.text(TextId::amounts_show), TextId::amounts_show, false, ShowPair{}}}, width, blocks,
                asked);
    const Paging paging = draw_page(blocks, frame.body, state.page);
    close_frame(ui, state, frame, paging, asked);
}

} // namespace ui
