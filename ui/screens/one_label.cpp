#include "ui/parts/frame.h"
#include "ui/screens/all.h"
#include "ui/widgets/button.h"
#include "ui/widgets/line_5_20.h"
#include "ui/widgets/pattern.h"
#include "ui/widgets/text.h"

#include <cmath>

namespace ui {
namespace {

using Kind = LabelPiece::Kind;

float lead_amount_width(const Ui& ui, const LabelPiece& piece, float width)
{
    const Style style = Style::Name;
    return std::max(widest_word(ui, piece.amount, style), std::min(text_width(ui, piece.amount, style), width * 0.5F));
}

/// A large fact: its name left, its figure right; below each other where they do not fit beside each other.
Block lead(const Ui& ui, const LabelPiece& piece, float width)
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

struct FigureWidths {
    bool one_line = false; ///< name, amount, line and reading beside each other
    bool stacked = false;  ///< the amount below the name
    float name = 0;
    float amount = 0;
    float reading = 0;
};

FigureWidths figure_widths(const Ui& ui, const LabelWords& label, float width)
{
    FigureWidths widths;
    float reading = 0;
    for (const auto& piece : label.pieces) {
        if (piece.kind != Kind::Figure)
            continue;
        widths.name = std::max(widths.name, text_width(ui, piece.name, Style::Text));
        widths.amount = std::max(widths.amount, text_width(ui, piece.amount, Style::Strong));
        reading = std::max(reading, text_width(ui, piece.reading, Style::Text));
    }
    const float gap = 2 * ui.look.sizes.unit;
    const float line = width - widths.name - widths.amount - reading - 3 * gap;
    widths.one_line = line >= 30 * ui.look.sizes.unit;
    widths.reading = reading;
    return widths;
}

/// Where letters are too large for one line: the amount beside the name, or below it where the name needs all the room.
FigureWidths widths_for(const Ui& ui, const LabelPiece& piece, float width)
{
    const float gap = 2 * ui.look.sizes.unit;
    FigureWidths widths;
    widths.amount = text_width(ui, piece.amount, Style::Strong);
    widths.stacked = widest_word(ui, piece.name, Style::Text) + gap + widths.amount > width;
    if (widths.stacked)
        widths.amount = width;
    widths.name = widths.stacked ? width : width - gap - widths.amount;
    return widths;
}

/// A nutrient: name, amount, where its percent stands, and the reading as a sentence.
Block figure(const Ui& ui, const LabelPiece& piece, const FigureWidths& of_all, Side side, float width)
{
    const FigureWidths widths = of_all.one_line ? of_all : widths_for(ui, piece, width);
    const float gap = 2 * ui.look.sizes.unit;
    const float name = text_height(ui, piece.name, Style::Text, widths.name);
    const float amount = text_height(ui, piece.amount, Style::Strong, widths.amount);
    const float first =
        widths.stacked ? name + amount : std::max({name, amount, widths.one_line ? line_5_20_height(ui) : 0.0F});
    const float reading = text_height(ui, piece.reading, Style::Text, width);
    const bool has_line = piece.percent_value.has_value();
    const float line = has_line && !widths.one_line ? line_5_20_height(ui) : 0;
    const float height = first + (widths.one_line ? 0 : reading + line) + ui.look.sizes.unit;
    return {
        height,
        [=, &ui, &piece](Area area) {
            canvas().AddLine(area.low, {area.high.x, area.low.y}, ui.look.theme.hairline, 0.5F * ui.look.sizes.line);
            area.cut_top(ui.look.sizes.unit / 2);
            Area row = area.cut_top(first);
            const Area whole = row;
            const float middle = std::floor((first - line_height(ui, Style::Text)) / 2);
            Area words = row.cut_left(widths.name);
            if (name <= line_height(ui, Style::Text) && !widths.stacked)
                words.low.y += std::max(0.0F, middle);
            text(ui, piece.name, Style::Text, words);
            Area number = widths.one_line ? (row.cut_left(gap), row.cut_left(widths.amount))
                                          : Area{{whole.high.x - widths.amount, whole.low.y}, whole.high};
            if (widths.stacked)
                number.low.y += name;
            else if (amount <= line_height(ui, Style::Strong))
                number.low.y += std::max(0.0F, middle);
            text(ui, piece.amount, Style::Strong, number, Align::Right, Role::Figure);
            const auto percent = piece.percent_value;
            if (widths.one_line) {
                Area sentence = row.cut_right(widths.reading);
                sentence.low.y += middle;
                text(ui, piece.reading, Style::Text, sentence);
                if (percent)
                    line_5_20(ui, row.inset(gap, 0), side == Side::Left ? percent : std::nullopt,
                              side == Side::Right ? percent : std::nullopt);
                return;
            }
            area.cut_top(text(ui, piece.reading, Style::Text, area));
            if (percent)
                line_5_20(ui, area.cut_top(line), side == Side::Left ? percent : std::nullopt,
                          side == Side::Right ? percent : std::nullopt);
        },
        false, 0};
}

Block plain(const Ui& ui, const LabelPiece& piece, Style style, float width, float gap, bool with_next)
{
    const Role role = with_next ? Role::Heading : Role::Text;
    return {text_height(ui, piece.name, style, width) + (with_next ? ui.look.sizes.unit / 2 : 0.0F),
            [&ui, &piece, style, role](const Area& area) { text(ui, piece.name, style, area, Align::Left, role); },
            with_next, gap};
}

/// A sentence; a long one, such as a list of ingredients under large letters, in pieces that may part at a page's end.
void add_sentence(const Ui& ui, const LabelPiece& piece, const Area& page, std::vector<Block>& blocks)
{
    const float width = page.width();
    const float height = text_height(ui, piece.name, Style::Note, width);
    if (height <= page.height() / 2) {
        blocks.push_back(plain(ui, piece, Style::Note, width, ui.look.sizes.unit, false));
        return;
    }
    const float on_half_a_page = page.height() / 2 / line_height(ui, Style::Note);
    const auto most = static_cast<std::size_t>(std::clamp(on_half_a_page, 1.0F, 4.0F));
    float gap = ui.look.sizes.unit;
    for (const auto words : pieces_of_lines(ui, piece.name, Style::Note, width, most)) {
        blocks.push_back({text_height(ui, words, Style::Note, width),
                          [&ui, words](const Area& area) { text(ui, words, Style::Note, area); }, false, gap});
        gap = 0;
    }
}

std::vector<Block> blocks_of(const Ui& ui, const LabelWords& label, Side side, const Area& page)
{
    const float width = page.width();
    const FigureWidths widths = figure_widths(ui, label, width);
    std::vector<Block> blocks;
    for (const auto& piece : label.pieces) {
        switch (piece.kind) {
        case Kind::Lead:
            blocks.push_back(lead(ui, piece, width));
            break;
        case Kind::Heading:
            blocks.push_back(plain(ui, piece, Style::Strong, width, 2 * ui.look.sizes.unit, true));
            break;
        case Kind::Figure:
            blocks.push_back(figure(ui, piece, widths, side, width));
            break;
        case Kind::Sentence:
            add_sentence(ui, piece, page, blocks);
            break;
        }
    }
    return blocks;
}

/// The product's name on its side's tint, with the side's mark and pattern.
float title(const Ui& ui, const State& state, Area area, bool measure_only)
{
    const auto& sizes = ui.look.sizes;
    const float strip = 2.5F * sizes.unit;
    const float mark_room = line_height(ui, Style::Name) * 0.8F;
    const float inner = area.width() - strip - 4 * sizes.unit - mark_room;
    const float height = text_height(ui, state.label->title, Style::Name, inner) + 2 * sizes.unit;
    if (measure_only)
        return height;
    area.high.y = area.low.y + height;
    canvas().AddRectFilled(area.low, area.high, colours_of(ui, state.label_side).tint);
    pattern(ui, state.label_side, state.label_side == Side::Left ? area.cut_left(strip) : area.cut_right(strip));
    Area words = area.inset(2 * sizes.unit, sizes.unit);
    const Area place = words.cut_left(mark_room);
    const float radius = 0.25F * line_height(ui, Style::Name);
    mark(ui, state.label_side, {place.low.x + radius, place.low.y + line_height(ui, Style::Name) / 2}, radius);
    text(ui, state.label->title, Style::Name, words, Align::Left, Role::Heading);
    return height;
}

} // namespace

void one_label_screen(const Ui& ui, const State& state, Actions& asked)
{
    if (!state.label)
        return;
    const auto& sizes = ui.look.sizes;
    const Frame frame = frame_of(ui, state);
    Area rest = frame.body;
    title(ui, state, rest.cut_top(title(ui, state, rest, true)), false);
    rest.cut_top(sizes.unit);
    const float width = rest.width();
    auto blocks = blocks_of(ui, *state.label, state.label_side, rest);
    if (state.pair) {
        const auto& words = ui.language.text(TextId::button_compare);
        const float wide = std::min(width, button_width(ui, words, Style::Text));
        blocks.insert(blocks.begin(), {button_height(ui, words, Style::Text, wide),
                                       [&ui, &asked, wide](Area area) {
                                           if (button(ui, TextId::button_compare, area.cut_left(wide),
                                                      {Style::Text, false, false, Align::Centre}))
                                               asked.push_back(ShowPair{});
                                       },
                                       false, 0});
    } else {
        const auto& words = ui.language.text(TextId::label_scan_another);
        blocks.insert(blocks.begin(),
                      {text_height(ui, words, Style::Quiet, width),
                       [&ui, &words](const Area& area) { text(ui, words, Style::Quiet, area); }, false, 0});
    }
    const Paging paging = draw_page(blocks, rest, state.page);
    close_frame(ui, state, frame, paging, asked);
}

} // namespace ui
