#include "ui/parts/frame.h"
#include "ui/parts/list.h"
#include "ui/screens/all.h"
#include "ui/widgets/text.h"

namespace ui {
namespace {

Block words(const Ui& ui, const std::string& what, Style style, float width)
{
    const Role role = style == Style::Headline ? Role::Heading : Role::Text;
    return {text_height(ui, what, style, width),
            [&ui, &what, style, role](const Area& area) { text(ui, what, style, area, Align::Left, role); }, true,
            ui.look.sizes.unit};
}

void list_screen(const Ui& ui, const State& state, std::vector<Block> head, const std::vector<Choice>& choices,
                 Actions& asked)
{
    const Frame frame = frame_of(ui, state);
    for (auto& block : list_blocks(ui, choices, frame.body.width()))
        head.push_back(std::move(block));
    const Paging paging = draw_page(head, frame.body, state.page);
    close_frame(ui, state, frame, paging, asked);
}

std::vector<Choice> products(const State& state, Actions& asked)
{
    std::vector<Choice> choices;
    for (const auto& pick : state.picks)
        choices.push_back({pick.name, pick.detail, [&pick, &asked] { asked.push_back(TakeProduct{pick.gtin}); }});
    return choices;
}

} // namespace

void pick_aisle_screen(const Ui& ui, const State& state, Actions& asked)
{
    const float width = frame_of(ui, state).body.width();
    std::vector<Block> head{words(ui, ui.language.text(TextId::pick_aisle_title), Style::Headline, width)};
    if (state.aisles.empty())
        head.push_back(words(ui, ui.language.text(TextId::pick_empty), Style::Text, width));
    std::vector<Choice> choices;
    for (const auto& aisle : state.aisles)
        choices.push_back({aisle.words, aisle.count, [&aisle, &asked] { asked.push_back(OpenAisle{aisle.aisle}); }});
    list_screen(ui, state, std::move(head), choices, asked);
}

void pick_product_screen(const Ui& ui, const State& state, Actions& asked)
{
    const float width = frame_of(ui, state).body.width();
    const auto& title = state.pick_title.empty() ? ui.language.text(TextId::pick_no_aisle) : state.pick_title;
    list_screen(ui, state, {words(ui, title, Style::Headline, width)}, products(state, asked), asked);
}

void which_product_screen(const Ui& ui, const State& state, Actions& asked)
{
    const float width = frame_of(ui, state).body.width();
    list_screen(ui, state,
                {words(ui, ui.language.text(TextId::which_title), Style::Headline, width),
                 words(ui, ui.language.text(TextId::which_lead), Style::Note, width)},
                products(state, asked), asked);
}

} // namespace ui
