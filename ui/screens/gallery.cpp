#include "ui/parts/frame.h"
#include "ui/screens/all.h"
#include "ui/widgets/button.h"
#include "ui/widgets/line_5_20.h"
#include "ui/widgets/pattern.h"
#include "ui/widgets/text.h"

namespace ui {
namespace {

void add_words(const Ui& ui, const std::string& words, Style style, float width, std::vector<Block>& blocks)
{
    blocks.push_back({text_height(ui, words, style, width),
                      [&ui, &words, style](const Area& area) { text(ui, words, style, area); }, false,
                      ui.look.sizes.unit});
}

void add_lines(const Ui& ui, std::vector<Block>& blocks)
{
    struct Pair {
        std::optional<int> left;
        std::optional<int> right;
    };
    blocks.push_back({line_height(ui, Style::QuietNote), [&ui](const Area& area) { line_5_20_scale(ui, area); }, true,
                      ui.look.sizes.gap});
    for (const Pair& pair : {Pair{0, 5}, Pair{12, 12}, Pair{19, 38}, Pair{100, 240}, Pair{std::nullopt, 3}})
        blocks.push_back({line_5_20_height(ui),
                          [&ui, pair](const Area& area) { line_5_20(ui, area, pair.left, pair.right); }, false,
                          ui.look.sizes.unit});
}

} // namespace

void gallery_screen(const Ui& ui, const State& state, Actions& asked)
{
    const Frame frame = frame_of(ui, state);
    const float width = frame.body.width();
    const auto& sizes = ui.look.sizes;
    std::vector<Block> blocks;
    add_words(ui, ui.language.text(TextId::gallery_title), Style::Headline, width, blocks);
    for (const Style style : {Style::Note, Style::QuietNote, Style::Text, Style::Strong, Style::Name, Style::Figure})
        add_words(ui, ui.language.text(TextId::gallery_sample), style, width, blocks);
    for (const bool chosen : {false, true})
        blocks.push_back(
            {button_height(ui, ui.language.text(TextId::basis_package), Style::Note, width),
             [&ui, chosen](Area area) {
                 const float wide = button_width(ui, ui.language.text(TextId::basis_package));
                 ImGui::PushID(chosen);
                 button(ui, TextId::basis_package, area.cut_left(wide), {Style::Note, chosen, false, Align::Centre});
                 ImGui::PopID();
             },
             false, sizes.gap});
    blocks.push_back(
        {8 * sizes.unit,
         [&ui, &sizes](Area area) {
             for (const Side side : {Side::Left, Side::Right}) {
                 pattern(ui, side, area.cut_left(20 * sizes.unit));
                 area.cut_left(sizes.gap);
                 const Area place = area.cut_left(6 * sizes.unit);
                 mark(ui, side, {place.low.x + 2 * sizes.unit, (place.low.y + place.high.y) / 2}, 2 * sizes.unit);
             }
         },
         false, sizes.gap});
    add_lines(ui, blocks);
    const Paging paging = draw_page(blocks, frame.body, state.page);
    close_frame(ui, state, frame, paging, asked);
}

} // namespace ui
