#include "ui/parts/frame.h"
#include "ui/screens/all.h"
#include "ui/widgets/text.h"

namespace ui {
namespace {

/// A sentence in pieces that any page holds.
void add_line(const Ui& ui, const std::string& words, Style style, Role role, float width, float gap,
              std::vector<Block>& blocks)
{
    constexpr std::size_t most_lines = 5;
    for (const auto piece : pieces_of_lines(ui, words, style, width, most_lines)) {
        blocks.push_back(
            {text_height(ui, piece, style, width),
             [&ui, piece, style, role](const Area& area) { text(ui, piece, style, area, Align::Left, role); },
             role == Role::Heading, gap});
        gap = 0;
    }
}

} // namespace

void why_screen(const Ui& ui, const State& state, Actions& asked)
{
    if (!state.why)
        return;
    const Frame frame = frame_of(ui, state);
    const float width = frame.body.width();
    const float unit = ui.look.sizes.unit;
    std::vector<Block> blocks;
    add_line(ui, state.why->title, Style::Strong, Role::Heading, width, 0, blocks);
    for (const auto& line : state.why->lines)
        add_line(ui, line.words, line.heading ? Style::Strong : Style::Note, line.heading ? Role::Heading : Role::Text,
                 width, line.heading ? 2 * unit : unit / 2, blocks);
    const Paging paging = draw_page(blocks, frame.body, state.page);
    close_frame(ui, state, frame, paging, asked);
}

} // namespace ui
