#include "ui/parts/offers.h"

#include "ui/widgets/button.h"

#include <algorithm>
#include <utility>

namespace ui {
namespace {

/// Smaller letters where a button with many words would fill a page.
Style style_of(const Ui& ui, const std::vector<Offer>& offers, float width)
{
    const float most = 0.3F * ui.look.sizes.height;
    const bool fit = std::ranges::all_of(
        offers, [&](const Offer& offer) { return button_height(ui, offer.words, Style::Text, width) <= most; });
    return fit ? Style::Text : Style::Bar;
}

void draw_offers(const Ui& ui, const std::vector<Offer>& line, Style style, Area area, Actions& asked)
{
    const float gap = 1.5F * ui.look.sizes.unit;
    const float width = area.width();
    for (const auto& offer : line) {
        const Area place = area.cut_left(std::min(width, button_width(ui, offer.words, style)));
        if (button(ui, offer.words, offer.id, place, {style, offer.chosen, false, Align::Centre}))
            asked.push_back(offer.action);
        area.cut_left(gap);
    }
}

} // namespace

void add_offers(const Ui& ui, const std::vector<Offer>& offers, float width, std::vector<Block>& blocks, Actions& asked)
{
    const float gap = 1.5F * ui.look.sizes.unit;
    const Style style = style_of(ui, offers, width);
    std::vector<std::vector<Offer>> lines;
    float used = 0;
    for (const auto& offer : offers) {
        const float wanted = std::min(width, button_width(ui, offer.words, style));
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
            height = std::max(height, button_height(ui, offer.words, style, width));
        blocks.push_back({height,
                          [&ui, &asked, style, line = std::move(line)](const Area& area) {
                              draw_offers(ui, line, style, area, asked);
                          },
                          false, ui.look.sizes.gap});
    }
}

Offer words_offer(const Ui& ui)
{
    return {ui.language.text(TextId::button_words), TextId::button_words, false, AskAccess{OpenWords{}}};
}

} // namespace ui
