#include "ui/parts/lead_fact.h"

#include "ui/widgets/text.h"

#include <algorithm>

namespace ui {
namespace {

float lead_amount_width(const Ui& ui, const LabelPiece& piece, float width)
{
    const Style style = Style::Name;
    return std::max(widest_word(ui, piece.amount, style), std::min(text_width(ui, piece.amount, style), width * 0.5F));
}

} // namespace

Block lead_fact(const Ui& ui, const LabelPiece& piece, float width)
{
    const float amount = lead_amount_width(ui, piece, width);
    const float gap = 2 * ui.look.sizes.unit;
    const bool beside = widest_word(ui, piece.name, Style::Text) + gap + amount <= width;
    const float name_width = beside ? width - amount - gap : width;
    const float name_height = text_height(ui, piece.name, Style::Text, name_width);
    const float amount_height = text_height(ui, piece.amount, Style::Name, beside ? amount : width);
    // The name sits lower, so that both stand on one line.
    const float lower = beside ? (line_height(ui, Style::Name) - line_height(ui, Style::Text)) * 0.7F : 0;
    const float height = beside ? std::max(name_height + lower, amount_height) : name_height + amount_height;
    return {height,
            [&ui, &piece, beside, name_width, name_height, amount, lower](Area area) {
                Area name = beside ? area.cut_left(name_width) : area.cut_top(name_height);
                if (beside) {
                    name.low.y += lower;
                    text(ui, piece.name, Style::Text, name);
                    text(ui, piece.amount, Style::Name, area.cut_right(amount), Align::Right, Role::Figure);
                } else {
                    text(ui, piece.name, Style::Text, name);
                    text(ui, piece.amount, Style::Name, area, Align::Left, Role::Figure);
                }
            },
            false, ui.look.sizes.unit};
}

} // namespace ui
