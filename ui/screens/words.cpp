#include "ui/parts/frame.h"
#include "ui/parts/sentences.h"
#include "ui/screens/all.h"

namespace ui {

void words_screen(const Ui& ui, const State& state, Actions& asked)
{
    const Frame frame = frame_of(ui, state);
    const float width = frame.body.width();
    const float unit = ui.look.sizes.unit;
    std::vector<Block> blocks;
    add_words(ui, ui.language.text(TextId::words_title), Style::Strong, Role::Heading, width, 0, blocks);
    for (const auto& meaning : state.words) {
        add_words(ui, meaning.word, Style::Text, Role::Heading, width, 1.5F * unit, blocks);
        add_words(ui, meaning.sentence, Style::Note, Role::Text, width, 0, blocks);
    }
    const Paging paging = draw_page(blocks, frame.body, state.page);
    close_frame(ui, state, frame, paging, asked);
}

} // namespace ui
