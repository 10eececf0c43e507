#include "ui/parts/lead_fact.h"

#include "ui/widgets/text.h"

#include <algorithm>

namespace ui {
namespace {

/// Under the largest letters, what is large otherwise is set in them.
Style name_style(const Ui& ui)
{
    return ui.look.sizes.crowded() ? Style::Note : Style::Text;
}

Style amount_style(const Ui& ui)
{
    return ui.look.sizes.crowded() ? Style::Strong : Style::Name;
}

float lead_amount_width(const Ui& ui, const LabelPiece& piece, float width)
{
    const Style style = amount_style(ui);
    return std::max(widest_word(ui, piece.amount, style), std::min(text_width(ui, piece.amount, style), width * 0.5F));
}

} // namespace

Block lead_fact(const Ui& ui, const LabelPiece& piece, float width)
{
    const Style small = name_style(ui);
    const Style large = amount_style(ui);
    const float amount = lead_amount_width(ui, piece, width);
    const float gap = 2 * ui.look.sizes.unit;
    const bool beside = widest_word(ui, piece.name, small) + gap + amount <= width;
    const float name_width = beside ? width - amount - gap : width;
    const float name_height = text_height(ui, piece.name, small, name_width);
    const float amount_height = text_height(ui, piece.amount, large, beside ? amount : width);
    // The name sits lower, so that both stand on one line.
    const float lower = beside ? (line_height(ui, large) - line_height(ui, small)) * 0.7F : 0;
    const float height = beside ? std::max(name_height + lower, amount_height) : name_height + amount_height;
    return {height,
            [&ui, &piece, small, large, beside, name_width, name_height, amount, lower](Area area) {
                Area name = beside ? area.cut_left(name_width) : area.cut_top(name_height);
                if (beside) {
                    name.low.y += lower;
                    text(ui, piece.name, small, name);
                    text(ui, piece.amount, large, area.cut_right(amount), Align::Right, Role::Figure);
                } else {
                    text(ui, piece.name, small, name);
                    text(ui, piece.amount, large, area, Align::Left, Role::Figure);
                }
            },
            false, ui.look.sizes.unit};
}

} // namespace ui
