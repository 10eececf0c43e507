#include "ui/parts/sentences.h"

#include <algorithm>

namespace ui {

void add_words(const Ui& ui, const std::string& words, Style style, Role role, float width, float gap,
               std::vector<Block>& blocks)
{
    // As many as fit under short heads, also where the largest letters leave little room.
    const auto fit = static_cast<std::size_t>(0.3F * ui.look.sizes.height / line_height(ui, style));
    const std::size_t most_lines = std::clamp<std::size_t>(fit, 1, 4);
    for (const auto piece : pieces_of_lines(ui, words, style, width, most_lines)) {
        blocks.push_back({text_height(ui, piece, style, width),
                          [&ui, piece = std::string(piece), style, role](const Area& area) {
                              text(ui, piece, style, area, Align::Left, role);
                          },
                          role == Role::Heading, gap});
        gap = 0;
    }
}

} // namespace ui
