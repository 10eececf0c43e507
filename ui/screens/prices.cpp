#include "ui/parts/frame.h"
#include "ui/parts/keypad.h"
#include "ui/parts/offers.h"
#include "ui/screens/all.h"
#include "ui/widgets/button.h"
#include "ui/widgets/text.h"
#include "ui/words/price_words.h"

#include <algorithm>

namespace ui {
namespace {

constexpr Side sides[] = {Side::Left, Side::Right};

float gap_of(const Ui& ui)
{
    return 1.5F * ui.look.sizes.unit;
}

/// Over a field: the side, with the product's name where there is room for it.
std::string field_name(const State& state, Side side, bool with_names)
{
    const auto& words = state.pair->sides[index_of(side)];
    return with_names ? words.place + ": " + words.name : words.place;
}

Style price_style(const Ui& ui, float width)
{
    const bool fits = button_width(ui, money_words(core::dearest), Style::Figure) <= width;
    return fits && !keypad_is_small(ui) ? Style::Figure : Style::Bar;
}

Style name_style(const Ui& ui)
{
    return keypad_is_small(ui) ? Style::Bar : Style::Note;
}

Style done_style(const Ui& ui)
{
    return keypad_is_small(ui) ? Style::Bar : Style::Text;
}

float price_height(const Ui& ui, float width)
{
    return button_height(ui, money_words(core::dearest), price_style(ui, width), width);
}

float field_height(const Ui& ui, const State& state, Side side, float width, bool with_names)
{
    return text_height(ui, field_name(state, side, with_names), name_style(ui), width) + ui.look.sizes.unit / 2 +
           price_height(ui, width);
}

void draw_field(const Ui& ui, const State& state, Side side, Area area, bool with_names, Actions& asked)
{
    const Area box = area.cut_bottom(price_height(ui, area.width())); // both boxes stand on one line
    text(ui, field_name(state, side, with_names), name_style(ui), area);
    const auto price = state.prices[index_of(side)];
    ImGui::PushID(static_cast<int>(index_of(side)));
    if (button(ui, money_words(price.value_or(core::Money{})),
               side == Side::Left ? TextId::side_left : TextId::side_right, box,
               {price_style(ui, box.width()), state.price_side == side, false, Align::Centre}))
        asked.push_back(PickPriceSide{side});
    ImGui::PopID();
}

void draw_keypad(const Ui& ui, const Area& area, Actions& asked)
{
    const auto key = keypad(ui, area);
    if (!key)
        return;
    switch (key->kind) {
    case KeypadKey::Kind::Digit:
        asked.push_back(TypePriceDigit{key->digit});
        break;
    case KeypadKey::Kind::Erase:
        asked.push_back(ErasePriceDigit{});
        break;
    case KeypadKey::Kind::Clear:
        asked.push_back(ClearPrice{});
        break;
    }
}

float done_height(const Ui& ui, float width)
{
    return button_height(ui, ui.language.text(TextId::button_prices_done), done_style(ui), width);
}

void draw_done(const Ui& ui, const Area& area, Actions& asked)
{
    if (button(ui, TextId::button_prices_done, area, {done_style(ui), false, false, Align::Centre}))
        asked.push_back(ShowPair{});
}

/// The two fields one below the other with the keys beside them.
Block lying_entry(const Ui& ui, const State& state, const Area& body, Actions& asked)
{
    const float keys = std::max(keypad_width(ui), body.width() * 0.45F);
    const float column = body.width() - keys - 3 * ui.look.sizes.unit;
    const float gap = gap_of(ui);
    const auto height = [&](bool with_names) {
        float sum = done_height(ui, column);
        for (const auto side : sides)
            sum += field_height(ui, state, side, column, with_names) + gap;
        return sum;
    };
    const bool with_names = height(true) <= body.height();
    return {std::max(height(with_names), keypad_height(ui)),
            [=, &ui, &state, &asked](Area area) {
                Area left = area.cut_left(column);
                for (const auto side : sides) {
                    draw_field(ui, state, side, left.cut_top(field_height(ui, state, side, column, with_names)),
                               with_names, asked);
                    left.cut_top(gap);
                }
                draw_keypad(ui, area.cut_right(keys), asked);
                draw_done(ui, left.cut_top(done_height(ui, column)), asked);
            },
            false, gap};
}

/// The two fields side by side over the keys.
Block upright_entry(const Ui& ui, const State& state, const Area& body, Actions& asked)
{
    const float gap = gap_of(ui);
    const float column = (body.width() - 2 * gap) / 2;
    const auto fields = [&](bool with_names) {
        return std::max(field_height(ui, state, Side::Left, column, with_names),
                        field_height(ui, state, Side::Right, column, with_names));
    };
    const float rest = keypad_height(ui) + done_height(ui, body.width()) + 2 * gap;
    const bool with_names = fields(true) + rest <= body.height();
    const float high = fields(with_names);
    return {high + rest,
            [=, &ui, &state, &asked](Area area) {
                Area line = area.cut_top(high);
                draw_field(ui, state, Side::Left, line.cut_left(column), with_names, asked);
                draw_field(ui, state, Side::Right, line.cut_right(column), with_names, asked);
                area.cut_top(gap);
                draw_keypad(ui, area.cut_top(keypad_height(ui)), asked);
                area.cut_top(gap);
                draw_done(ui, area.cut_top(done_height(ui, area.width())), asked);
            },
            false, gap};
}

Block words_block(const Ui& ui, std::string_view words, Style style, float width, float gap, Role role = Role::Text)
{
    return {text_height(ui, words, style, width),
            [&ui, words, style, role](const Area& area) { text(ui, words, style, area, Align::Left, role); }, false,
            gap};
}

/// The keys come first of all: what is said of them only where it does not turn them to a second page.
std::vector<Block> blocks_of(const Ui& ui, const State& state, const Area& body, Actions& asked)
{
    constexpr std::size_t most_lines = 4;
    const float width = body.width();
    const float unit = ui.look.sizes.unit;
    std::vector<Block> blocks;
    const auto entry =
        ui.look.sizes.upright() ? upright_entry(ui, state, body, asked) : lying_entry(ui, state, body, asked);
    const auto title = words_block(ui, ui.language.text(TextId::prices_title), Style::Strong, width, 0, Role::Heading);
    const auto lead = words_block(ui, ui.language.text(TextId::prices_lead), Style::Note, width, unit / 2);
    const float taken = title.height + entry.height + entry.gap;
    if (taken <= body.height())
        blocks.push_back(title);
    if (taken + lead.height + lead.gap <= body.height())
        blocks.push_back(lead);
    blocks.push_back(entry);
    if (state.price_words)
        for (const auto& sentence : state.price_words->sentences) {
            float gap = unit;
            for (const auto piece : pieces_of_lines(ui, sentence, Style::Note, width, most_lines)) {
                blocks.push_back(words_block(ui, piece, Style::Note, width, gap));
                gap = 0;
            }
        }
    add_offers(ui, {words_offer(ui)}, width, blocks, asked);
    return blocks;
}

} // namespace

void prices_screen(const Ui& ui, const State& state, Actions& asked)
{
    if (!state.pair)
        return;
    const Frame frame = frame_of(ui, state);
    const auto blocks = blocks_of(ui, state, frame.body, asked);
    const Paging paging = draw_page(blocks, frame.body, state.page);
    close_frame(ui, state, frame, paging, asked);
}

} // namespace ui
