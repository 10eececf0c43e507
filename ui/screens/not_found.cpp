#include "ui/parts/camera_corner.h"
#include "ui/parts/frame.h"
#include "ui/parts/offers.h"
#include "ui/parts/sentences.h"
#include "ui/screens/all.h"
#include "ui/widgets/button.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <string>
#include <vector>

namespace ui {

namespace {

/// `corner`: the width that the camera's picture takes off what stands beside it.
std::vector<Block> blocks_of(const Ui& ui, const State& state, float width, float corner, Actions& asked)
{
    const auto& sizes = ui.look.sizes;
    const std::string code = ui.language.fill(TextId::not_found_code, {{"code", state.code}});
    std::vector<Block> blocks;
    const auto add = [&](const std::string& words, Style style, Role role, float gap, float wide) {
        add_words(ui, words, style, role, wide, gap, blocks);
    };
    const float beside = width - corner;
    add(ui.language.text(TextId::not_found_title), Style::Headline, Role::Heading, 0, beside);
    add(code, widest_word(ui, code, Style::Figure) <= beside ? Style::Figure : Style::Bar, Role::Figure, sizes.gap,
        beside);
    add(ui.language.text(TextId::not_found_what_to_do), Style::Text, Role::Text, sizes.gap, beside);
    if (corner > 0)
        set_beside_camera(ui, state, width, blocks);
    const auto& choose = ui.language.text(TextId::button_choose_by_name);
    const float wide = std::min(width, button_width(ui, choose, Style::Text));
    blocks.push_back({button_height(ui, choose, Style::Text, wide),
                      [&ui, &asked, wide](Area area) {
                          if (button(ui, TextId::button_choose_by_name, area.cut_left(wide),
                                     {Style::Text, false, false, Align::Centre}))
                              asked.push_back(FindByName{});
                      },
                      false, sizes.gap});
    add(ui.language.text(TextId::not_found_read_package), Style::Quiet, Role::Text, sizes.gap, width);
    add_offers(ui, {words_offer(ui)}, width, blocks, asked);
    return blocks;
}

} // namespace

void not_found_screen(const Ui& ui, const State& state, Actions& asked)
{
    const Frame frame = frame_of(ui, state);
    const float width = frame.body.width();
    const float corner = camera_corner_width(ui, state, width);
    auto blocks = blocks_of(ui, state, width, corner, asked);
    if (corner > 0 && height_of(blocks) > frame.body.height()) // words come first
        blocks = blocks_of(ui, state, width, 0, asked);
    const Paging paging = draw_page(blocks, frame.body, state.page);
    close_frame(ui, state, frame, paging, asked);
}

} // namespace ui
