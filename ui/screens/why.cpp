#include "ui/parts/frame.h"
#include "ui/parts/offers.h"
#include "ui/parts/sentences.h"
#include "ui/screens/all.h"

namespace ui {

void why_screen(const Ui& ui, const State& state, Actions& asked)
{
    if (!state.why)
        return;
    const Frame frame = frame_of(ui, state);
    const float width = frame.body.width();
    const float unit = ui.look.sizes.unit;
    std::vector<Block> blocks;
    add_words(ui, state.why->title, Style::Strong, Role::Heading, width, 0, blocks);
    add_words(ui, state.why->what, Style::Note, Role::Text, width, unit / 2, blocks);
    for (const auto& line : state.why->lines)
        add_words(ui, line.words, line.heading ? Style::Strong : Style::Note, line.heading ? Role::Heading : Role::Text,
                  width, line.heading ? 2 * unit : unit / 2, blocks);
    add_offers(ui, {words_offer(ui)}, width, blocks, asked);
    const Paging paging = draw_page(blocks, frame.body, state.page);
    close_frame(ui, state, frame, paging, asked);
}

} // namespace ui
