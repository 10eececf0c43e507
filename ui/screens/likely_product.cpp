#include "ui/parts/frame.h"
#include "ui/parts/list.h"
#include "ui/parts/offers.h"
#include "ui/parts/sentences.h"
#include "ui/screens/all.h"

#include <algorithm>
#include <utility>
#include <vector>

namespace ui {
namespace {

std::vector<Choice> choices_of(const Ui& ui, const State& state, const Area& place, Actions& asked)
{
    std::vector<Choice> choices;
    for (const auto& likely : state.likely)
        choices.push_back(choice_within(
            ui, {likely.name, likely.detail, [&likely, &asked] { asked.push_back(TakeProduct{likely.gtin}); }},
            place.width(), place.height()));
    return choices;
}

/// Adds the answers and why the station asks. Under large letters it stands behind the answers, so that the first of
/// them is on the first page: what is said at the foot of every page tells the reason, too.
void add_answers(const Ui& ui, std::vector<Block> answers, const Area& place, std::vector<Block>& blocks)
{
    std::vector<Block> reason;
    add_words(ui, ui.language.text(TextId::likely_lead), Style::Note, Role::Text, place.width(), ui.look.sizes.gap,
              reason);
    std::vector<Block> first_page = blocks;
    first_page.insert(first_page.end(), reason.begin(), reason.end());
    first_page.push_back(answers.front());
    const bool fits = height_of(first_page) <= place.height();
    for (const auto* more : {fits ? &reason : &answers, fits ? &answers : &reason})
        blocks.insert(blocks.end(), more->begin(), more->end());
}

} // namespace

void likely_product_screen(const Ui& ui, const State& state, Actions& asked)
{
    const Frame frame = frame_of(ui, state);
    const float width = frame.body.width();
    const bool one = state.likely.size() == 1;
    std::vector<Block> blocks;
    add_words(ui, ui.language.text(one ? TextId::likely_title_one : TextId::likely_title), Style::Headline,
              Role::Heading, width, 0, blocks);
    const auto choices = choices_of(ui, state, frame.body, asked);
    auto answers = list_blocks(ui, choices, width, 2);
    const auto too_high = [&](const Block& row) { return row.height > frame.body.height(); };
    if (std::ranges::any_of(answers, too_high)) // names of many lines in narrow columns
        answers = list_blocks(ui, choices, width, 1);
    const TextId none = one ? TextId::likely_none_one : TextId::likely_none;
    add_offers(ui, {{ui.language.text(none), none, false, GoBack{}}}, width, answers, asked);
    add_answers(ui, std::move(answers), frame.body, blocks);
    const Paging paging = draw_page(blocks, frame.body, state.page);
    close_frame(ui, state, frame, paging, asked);
}

} // namespace ui
