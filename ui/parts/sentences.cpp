#include "ui/parts/sentences.h"

namespace ui {

void add_words(const Ui& ui, const std::string& words, Style style, Role role, float width, float gap,
               std::vector<Block>& blocks)
{
    constexpr std::size_t most_lines = 4; // as many as fit under short heads at the largest letters
    for (const auto piece : pieces_of_lines(ui, words, style, width, most_lines)) {
        blocks.push_back(
            {text_height(ui, piece, style, width),
             [&ui, piece, style, role](const Area& area) { text(ui, piece, style, area, Align::Left, role); },
             role == Role::Heading, gap});
        gap = 0;
    }
}

} // namespace ui
