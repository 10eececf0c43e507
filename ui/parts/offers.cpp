#include "ui/parts/offers.h"

#include "ui/widgets/button.h"

#include <algorithm>
#include <utility>

namespace ui {
namespace {

void draw_offers(const Ui& ui, const std::vector<Offer>& line, Area area, Actions& asked)
{
    const float gap = 1.5F * ui.look.sizes.unit;
    const float width = area.width();
    for (const auto& offer : line) {
        const Area place = area.cut_left(std::min(width, button_width(ui, offer.words, Style::Text)));
        if (button(ui, offer.words, offer.id, place, {Style::Text, offer.chosen, false, Align::Centre}))
            asked.push_back(offer.action);
        area.cut_left(gap);
    }
}

} // namespace

void add_offers(const Ui& ui, const std::vector<Offer>& offers, float width, std::vector<Block>& blocks, Actions& asked)
{
    const float gap = 1.5F * ui.look.sizes.unit;
    std::vector<std::vector<Offer>> lines;
    float used = 0;
    for (const auto& offer : offers) {
        const float wanted = std::min(width, button_width(ui, offer.words, Style::Text));
        if (lines.empty() || used + wanted > width) {
            lines.emplace_back();
            used = 0;
        }
        lines.back().push_back(offer);
        used += wanted + gap;
    }
    for (auto& line : lines) {
        float height = 0;
        for (const auto& offer : line)
            height = std::max(height, button_height(ui, offer.words, Style::Text, width));
        blocks.push_back(
            {height, [&ui, &asked, line = std::move(line)](const Area& area) { draw_offers(ui, line, area, asked); },
             false, ui.look.sizes.gap});
    }
}

Offer words_offer(const Ui& ui)
{
    return {ui.language.text(TextId::button_words), TextId::button_words, false, AskAccess{OpenWords{}}};
}

} // namespace ui
