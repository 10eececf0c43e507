#include "ui/parts/frame.h"
#include "ui/parts/offers.h"
#include "ui/parts/sentences.h"
#include "ui/screens/all.h"

namespace ui {

void still_there_screen(const Ui& ui, const State& state, Actions& asked)
{
    const Frame frame = frame_of(ui, state);
    const float width = frame.body.width();
    const float gap = ui.look.sizes.gap;
    std::vector<Block> blocks;
    const std::string lead =
        ui.language.fill(TextId::still_there_lead, {{"seconds", std::to_string(state.seconds_left)}});
    add_words(ui, ui.language.text(TextId::still_there_title), Style::Name, Role::Heading, width, 0, blocks);
    // The answer before the reason: under the largest letters that is on the next page.
    add_offers(ui, {{ui.language.text(TextId::still_there_go_on), TextId::still_there_go_on, false, KeepGoing{}}},
               width, blocks, asked);
    add_words(ui, lead, Style::Text, Role::Text, width, gap, blocks);
    const Paging paging = draw_page(blocks, frame.body, state.page);
    close_frame(ui, state, frame, paging, asked);
}

} // namespace ui
