#include "ui/parts/frame.h"
#include "ui/parts/offers.h"
#include "ui/parts/sentences.h"
#include "ui/screens/all.h"

#include <algorithm>
#include <cmath>

namespace ui {
namespace {

/// A card as banks give it out: 85.60 x 53.98 mm, corners of 3.18 mm (ISO/IEC 7810, ID-1).
constexpr float card_width_mm = 85.60F;
constexpr float card_height_mm = 53.98F;
constexpr float card_corner_mm = 3.18F;

/// The outline, with its right edge to drag: whoever cannot drag has buttons for it.
void card(const Ui& ui, const State& state, const Area& area, Actions& asked)
{
    const float width = std::min(static_cast<float>(state.card_px), area.width());
    const float px_per_mm = width / card_width_mm;
    const Area outline{area.low, {area.low.x + width, area.low.y + card_height_mm * px_per_mm}};
    canvas().AddRect(outline.low, outline.high, ui.look.theme.ink, card_corner_mm * px_per_mm, 0,
                     2 * ui.look.sizes.line);
    ImGui::SetCursorScreenPos(area.low);
    ImGui::PushID("card");
    ImGui::InvisibleButton("drag", {area.width(), std::max(1.0F, area.height())});
    if (ImGui::IsItemActive()) {
        const float to = std::round(ImGui::GetIO().MousePos.x - area.low.x);
        if (to > 0 && static_cast<int>(to) != state.card_px)
            asked.push_back(AskAccess{SetCardWidth{static_cast<int>(to)}});
    }
    ImGui::PopID();
}

} // namespace

void measure_screen(const Ui& ui, const State& state, Actions& asked)
{
    const Frame frame = frame_of(ui, state);
    const auto& sizes = ui.look.sizes;
    const auto& language = ui.language;
    const float width = frame.body.width();
    std::vector<Block> blocks;
    add_words(ui, language.text(TextId::measure_title), Style::Strong, Role::Heading, width, 0, blocks);
    add_words(ui, language.text(TextId::measure_lead), Style::Note, Role::Text, width, sizes.unit, blocks);
    const float card_width = std::min(static_cast<float>(state.card_px), width);
    blocks.push_back({card_width * card_height_mm / card_width_mm + sizes.unit,
                      [&ui, &state, &asked](const Area& area) { card(ui, state, area, asked); }, false, sizes.unit});
    const auto step = [&](TextId id, int by) {
        return Offer{language.text(id), id, false, AskAccess{SetCardWidth{state.card_px + by}}};
    };
    add_offers(ui,
               {step(TextId::measure_much_smaller, -20),
                step(TextId::measure_smaller, -1),
                step(TextId::measure_larger, 1),
                step(TextId::measure_much_larger, 20),
                {language.text(TextId::measure_keep), TextId::measure_keep, false, AskAccess{KeepMeasure{}}}},
               width, blocks, asked);
    const Paging paging = draw_page(blocks, frame.body, state.page);
    close_frame(ui, state, frame, paging, asked);
}

} // namespace ui
