#include "ui/parts/frame.h"
#include "ui/parts/offers.h"
#include "ui/parts/sentences.h"
#include "ui/screens/all.h"
#include "ui/widgets/button.h"
#include "ui/widgets/text.h"

namespace ui {

void not_found_screen(const Ui& ui, const State& state, Actions& asked)
{
    const auto& sizes = ui.look.sizes;
    const Frame frame = frame_of(ui, state);
    const float width = frame.body.width();
    const std::string code = ui.language.fill(TextId::not_found_code, {{"code", state.code}});
    std::vector<Block> blocks;
    const auto add = [&](const std::string& words, Style style, Role role, float gap) {
        add_words(ui, words, style, role, width, gap, blocks);
    };
    add(ui.language.text(TextId::not_found_title), Style::Headline, Role::Heading, 0);
    add(code, widest_word(ui, code, Style::Figure) <= width ? Style::Figure : Style::Bar, Role::Figure, sizes.gap);
    add(ui.language.text(TextId::not_found_what_to_do), Style::Text, Role::Text, sizes.gap);
    const auto& choose = ui.language.text(TextId::button_choose_by_name);
    const float wide = std::min(width, button_width(ui, choose, Style::Text));
    blocks.push_back({button_height(ui, choose, Style::Text, wide),
                      [&ui, &asked, wide](Area area) {
                          if (button(ui, TextId::button_choose_by_name, area.cut_left(wide),
                                     {Style::Text, false, false, Align::Centre}))
                              asked.push_back(FindByName{});
                      },
                      false, sizes.gap});
    add(ui.language.text(TextId::not_found_read_package), Style::Quiet, Role::Text, sizes.gap);
    add_offers(ui, {words_offer(ui)}, width, blocks, asked);
    const Paging paging = draw_page(blocks, frame.body, state.page);
    close_frame(ui, state, frame, paging, asked);
}

} // namespace ui
