#include "ui/parts/frame.h"
#include "ui/parts/lead_fact.h"
#include "ui/parts/offers.h"
#include "ui/parts/sentences.h"
#include "ui/screens/all.h"
#include "ui/widgets/button.h"
#include "ui/widgets/line_5_20.h"
#include "ui/widgets/pattern.h"
#include "ui/widgets/text.h"

#include <cmath>
#include <memory>
#include <string>
#include <vector>

namespace ui {
namespace {

using Kind = LabelPiece::Kind;

Style words_style(const Ui& ui)
{
    return ui.look.sizes.crowded() ? Style::Note : Style::Text;
}

Style amount_style(const Ui& ui)
{
    return ui.look.sizes.crowded() ? Style::Note : Style::Strong;
}

struct FigureWidths {
    bool one_line = false;  ///< name, amount, line and reading beside each other
    bool two_lines = false; ///< name and amount, below them reading and line
    bool stacked = false;   ///< the amount below the name
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
        widths.name = std::max(widths.name, text_width(ui, piece.name, words_style(ui)));
        widths.amount = std::max(widths.amount, text_width(ui, piece.amount, amount_style(ui)));
        reading = std::max(reading, text_width(ui, piece.reading, words_style(ui)));
    }
    const float gap = 2 * ui.look.sizes.unit;
    const float line = width - widths.name - widths.amount - reading - 3 * gap;
    widths.one_line = line >= 30 * ui.look.sizes.unit;
    widths.two_lines = !widths.one_line && width - reading - gap >= 30 * ui.look.sizes.unit;
    widths.reading = reading;
    return widths;
}

/// Where letters are too large for one line: the amount beside the name, or below it where the name needs all the room.
FigureWidths widths_for(const Ui& ui, const LabelPiece& piece, const FigureWidths& of_all, float width)
{
    const float gap = 2 * ui.look.sizes.unit;
    FigureWidths widths;
    widths.two_lines = of_all.two_lines;
    widths.reading = of_all.two_lines ? of_all.reading : width;
    widths.amount = text_width(ui, piece.amount, amount_style(ui));
    widths.stacked = widest_word(ui, piece.name, words_style(ui)) + gap + widths.amount > width;
    if (widths.stacked)
        widths.amount = width;
    widths.name = widths.stacked ? width : width - gap - widths.amount;
    return widths;
}

/// Where the lines stand.
Area line_area(const Ui& ui, const FigureWidths& widths, Area area)
{
    const float gap = 2 * ui.look.sizes.unit;
    if (widths.two_lines)
        area.cut_left(widths.reading + gap);
    if (!widths.one_line)
        return area;
    area.cut_left(widths.name + gap + widths.amount);
    area.cut_right(widths.reading);
    return area.inset(gap, 0);
}

/// A nutrient: name, amount, where its percent stands, and the reading as a sentence.
Block figure(const Ui& ui, const LabelPiece& piece, const FigureWidths& of_all, Side side, float width)
{
    const FigureWidths widths = of_all.one_line ? of_all : widths_for(ui, piece, of_all, width);
    const float gap = 2 * ui.look.sizes.unit;
    const float name = text_height(ui, piece.name, words_style(ui), widths.name);
    const float amount = text_height(ui, piece.amount, amount_style(ui), widths.amount);
    const float first =
        widths.stacked ? name + amount : std::max({name, amount, widths.one_line ? line_5_20_height(ui) : 0.0F});
    const float reading = text_height(ui, piece.reading, words_style(ui), widths.reading);
    const float line = piece.percent_value ? line_5_20_height(ui) : 0;
    const float below = widths.two_lines ? std::max(reading, line) : reading + line;
    const float height = first + (widths.one_line ? 0 : below) + ui.look.sizes.unit;
    return {
        height,
        [=, &ui, &piece](Area area) {
            canvas().AddLine(area.low, {area.high.x, area.low.y}, ui.look.theme.hairline, 0.5F * ui.look.sizes.line);
            area.cut_top(ui.look.sizes.unit / 2);
            Area row = area.cut_top(first);
            const Area whole = row;
            const float middle = std::floor((first - line_height(ui, words_style(ui))) / 2);
            Area words = row.cut_left(widths.name);
            if (name <= line_height(ui, words_style(ui)) && !widths.stacked)
                words.low.y += std::max(0.0F, middle);
            text(ui, piece.name, words_style(ui), words);
            Area number = widths.one_line ? (row.cut_left(gap), row.cut_left(widths.amount))
                                          : Area{{whole.high.x - widths.amount, whole.low.y}, whole.high};
            if (widths.stacked)
                number.low.y += name;
            else if (amount <= line_height(ui, amount_style(ui)))
                number.low.y += std::max(0.0F, middle);
            text(ui, piece.amount, amount_style(ui), number, Align::Right, Role::Figure);
            const auto percent = piece.percent_value;
            if (widths.one_line) {
                Area sentence = row.cut_right(widths.reading);
                sentence.low.y += middle;
                text(ui, piece.reading, words_style(ui), sentence);
                if (percent)
                    line_5_20(ui, row.inset(gap, 0), side == Side::Left ? percent : std::nullopt,
                              side == Side::Right ? percent : std::nullopt);
                return;
            }
            Area second = area.cut_top(widths.two_lines ? below : reading);
            text(ui, piece.reading, words_style(ui), widths.two_lines ? second.cut_left(widths.reading) : second);
            second.cut_left(gap);
            if (percent)
                line_5_20(ui, widths.two_lines ? second : area.cut_top(line),
                          side == Side::Left ? percent : std::nullopt, side == Side::Right ? percent : std::nullopt);
        },
        false, 0};
}

/// A sentence; a long one, such as a list of ingredients under large letters, in pieces that may part at a page's end.
void add_sentence(const Ui& ui, const LabelPiece& piece, const Area& page, std::vector<Block>& blocks)
{
    const float width = page.width();
    const float height = text_height(ui, piece.name, Style::Note, width);
    if (height <= page.height() / 2) {
        add_words(ui, piece.name, Style::Note, Role::Text, width, ui.look.sizes.unit, blocks);
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

/// A heading, with the scale of the lines below it where the rows under it have any.
Block heading(const Ui& ui, const std::string& words, const FigureWidths& widths, bool scale, float width)
{
    // A long one (published rules) would leave a page of large letters to itself.
    const float most = 0.3F * ui.look.sizes.height;
    const Style style = text_height(ui, words, Style::Strong, width) > most ? Style::Bar : Style::Strong;
    const Area line = line_area(ui, widths, {{0, 0}, {width, 0}});
    const bool below = scale && text_width(ui, words, style) + ui.look.sizes.unit > line_5_20_scale_begin(ui, line);
    const float own = text_height(ui, words, style, width);
    const float marks = line_height(ui, Style::Note); // higher than letters of the bar
    const float height = (below ? own + marks : std::max(own, scale ? marks : 0)) + ui.look.sizes.unit / 2;
    return {height,
            [&ui, words, widths, scale, style](Area area) {
                text(ui, words, style, area, Align::Left, Role::Heading);
                area.low.y = area.high.y - line_height(ui, Style::Note);
                if (scale)
                    line_5_20_scale(ui, line_area(ui, widths, area));
            },
            true, 2 * ui.look.sizes.unit};
}

/// Whether a line stands between this heading and the next.
bool has_lines(const std::vector<LabelPiece>& pieces, std::size_t heading)
{
    for (std::size_t i = heading + 1; i < pieces.size() && pieces[i].kind != Kind::Heading; ++i)
        if (pieces[i].percent_value)
            return true;
    return false;
}

/// A heading, and the same once more for the pages that go on with it.
void add_heading(const Ui& ui, const LabelWords& label, std::size_t at, const FigureWidths& widths, float width,
                 std::vector<Block>& blocks, std::shared_ptr<const Block>& again)
{
    const auto& words = label.pieces[at].name;
    const bool scale = has_lines(label.pieces, at);
    blocks.push_back(heading(ui, words, widths, scale, width));
    const Block plain_again = heading(ui, words, widths, scale, width);
    const Block full =
        heading(ui, ui.language.fill(TextId::heading_continued, {{"heading", words}}), widths, scale, width);
    again = std::make_shared<const Block>(full.height > plain_again.height ? plain_again : full);
}

/// A figure that opens to where it comes from when it is touched, as high as a finger needs.
void open_on_touch(const Ui& ui, std::optional<core::Nutrient> nutrient, Side side, Block& block, Actions& asked)
{
    block.height = std::max(block.height, ui.look.sizes.target);
    block.draw = [&ui, &asked, nutrient, side, draw = std::move(block.draw)](const Area& area) {
        const std::size_t first_note = ui.notes.size();
        draw(area);
        if (touched(ui, TextId::why_hint, area, first_note))
            asked.push_back(OpenWhy{nutrient, side});
    };
}

std::vector<Block> blocks_of(const Ui& ui, const LabelWords& label, Side side, const Area& page, Actions& asked)
{
    const float width = page.width();
    const FigureWidths widths = figure_widths(ui, label, width);
    std::vector<Block> blocks;
    std::shared_ptr<const Block> again;
    for (std::size_t i = 0; i < label.pieces.size(); ++i) {
        const auto& piece = label.pieces[i];
        const std::size_t first = blocks.size();
        switch (piece.kind) {
        case Kind::Lead:
            blocks.push_back(lead_fact(ui, piece, width));
            break;
        case Kind::Heading:
            add_heading(ui, label, i, widths, width, blocks, again);
            continue;
        case Kind::Figure:
            blocks.push_back(figure(ui, piece, widths, side, width));
            break;
        case Kind::Sentence:
            add_sentence(ui, piece, page, blocks);
            break;
        }
        if ((piece.nutrient || piece.sizes) && blocks.size() > first)
            open_on_touch(ui, piece.nutrient, side, blocks[first], asked);
        for (std::size_t own = first; own < blocks.size(); ++own)
            blocks[own].again = again;
        if (piece.kind == Kind::Sentence)
            again.reset(); // what comes after a sentence is another matter
    }
    return blocks;
}

/// The product's name on its side's tint, with the side's mark and pattern; on every page, and so is the way back to
/// both. Keep is on the first.
struct Title {
    bool beside = false; ///< the buttons stand beside the name, else below it
    float keep = 0;      ///< the width of Keep, in either state; 0: not on this page
    float both = 0;      ///< of the way back; 0: there is no second product
    float buttons = 0;   ///< of all of them
    float name = 0;      ///< the width for the name
    float height = 0;
    std::string words; ///< name and brand, on a line each where one cannot hold both
    Style style = Style::Name;
};

float mark_room(const Ui& ui, Style style)
{
    return line_height(ui, style) * 0.8F;
}

/// Name and brand in one line where it can hold both, else on a line each.
std::string title_words(const Ui& ui, const LabelWords& label, Style style, float width)
{
    if (label.brand.empty())
        return label.name;
    const std::string one_line = label.name + " · " + label.brand;
    return text_width(ui, one_line, style) <= width ? one_line : label.name + "\n" + label.brand;
}

Title title_in(const Ui& ui, const State& state, Style style, float width, bool first_page)
{
    const auto& sizes = ui.look.sizes;
    Title title;
    title.style = style;
    if (first_page)
        title.keep = std::max(button_width(ui, ui.language.text(TextId::button_keep), Style::Bar),
                              button_width(ui, ui.language.text(TextId::button_kept), Style::Bar));
    if (state.pair)
        title.both = button_width(ui, ui.language.text(TextId::button_compare), Style::Bar);
    title.buttons = title.keep + title.both + (title.keep > 0 && title.both > 0 ? sizes.unit : 0);
    const float whole = width - 2.5F * sizes.unit - 4 * sizes.unit - mark_room(ui, style);
    const float beside = whole - title.buttons - 2 * sizes.unit;
    const auto& label = *state.label;
    const auto high = [&](float room) { return text_height(ui, title_words(ui, label, style, room), style, room); };
    const bool fits = title.buttons > 0 && beside > widest_word(ui, label.name + " " + label.brand, style);
    // Beside the name, unless it would take more lines there than the buttons save.
    title.beside = fits && std::max(high(beside), sizes.target) <= high(whole) + sizes.target + sizes.unit;
    title.name = title.beside ? beside : whole;
    title.words = title_words(ui, label, style, title.name);
    title.height = high(title.name) + 2 * sizes.unit;
    if (title.beside)
        title.height = std::max(title.height, sizes.target + 2 * sizes.unit);
    else if (title.buttons > 0)
        title.height += sizes.target + sizes.unit;
    return title;
}

/// The title in letters that leave room for what stands below it: large ones fill half of a page with a long name.
Title title_of(const Ui& ui, const State& state, const Area& body, bool first_page)
{
    const float most = body.height() * (first_page ? 0.5F : 0.34F);
    const Title large = title_in(ui, state, Style::Name, body.width(), first_page);
    return large.height <= most ? large : title_in(ui, state, Style::Bar, body.width(), first_page);
}

void draw_title(const Ui& ui, const State& state, const Title& title, Area area, Actions& asked)
{
    const auto& sizes = ui.look.sizes;
    const Side side = state.label_side;
    canvas().AddRectFilled(area.low, area.high, colours_of(ui, side).tint);
    const float strip = 2.5F * sizes.unit;
    pattern(ui, side, side == Side::Left ? area.cut_left(strip) : area.cut_right(strip));
    Area words = area.inset(2 * sizes.unit, sizes.unit);
    Area touch = words;
    if (title.beside)
        touch = words.cut_right(title.buttons);
    else if (title.buttons > 0)
        touch = words.cut_bottom(sizes.target);
    const Area place = words.cut_left(mark_room(ui, title.style));
    words.high.x = words.low.x + title.name;
    const float spare = words.height() - text_height(ui, title.words, title.style, title.name);
    words.low.y += title.beside ? std::max(0.0F, std::floor(spare / 2)) : 0;
    const float radius = 0.25F * line_height(ui, title.style);
    mark(ui, side, {place.low.x + radius, words.low.y + line_height(ui, title.style) / 2}, radius);
    text(ui, title.words, title.style, words, Align::Left, Role::Heading);
    touch.high.y = touch.low.y + sizes.target;
    const auto& held = state.sides[index_of(side)];
    const bool kept = held && held->kept;
    if (title.keep > 0 && button(ui, kept ? TextId::button_kept : TextId::button_keep, touch.cut_left(title.keep),
                                 {Style::Bar, kept, false, Align::Centre}))
        asked.push_back(ToggleKeep{side});
    if (title.keep > 0)
        touch.cut_left(sizes.unit);
    if (title.both > 0 &&
        button(ui, TextId::button_compare, touch.cut_left(title.both), {Style::Bar, false, false, Align::Centre}))
        asked.push_back(ShowPair{});
}

} // namespace

void one_label_screen(const Ui& ui, const State& state, Actions& asked)
{
    if (!state.label)
        return;
    const auto& sizes = ui.look.sizes;
    const Frame frame = frame_of(ui, state);
    const float width = frame.body.width();
    const Title first = title_of(ui, state, frame.body, true);
    const Title others = title_of(ui, state, frame.body, false);
    Area rest = frame.body;
    rest.cut_top(others.height + sizes.unit);
    auto blocks = blocks_of(ui, *state.label, state.label_side, rest, asked);
    if (!state.pair) {
        std::vector<Block> lead;
        add_words(ui, ui.language.text(TextId::label_scan_another), Style::QuietNote, Role::Text, width, 0, lead);
        blocks.insert(blocks.begin(), lead.begin(), lead.end());
    }
    add_offers(ui, {words_offer(ui)}, width, blocks, asked);
    const float high = frame.body.height() - sizes.unit;
    const Pages pages = deal_pages(blocks, high - first.height, high - others.height, state.page);
    const Title& title = pages.paging.page == 0 ? first : others;
    rest = frame.body;
    draw_title(ui, state, title, rest.cut_top(title.height), asked);
    rest.cut_top(sizes.unit);
    draw_page(blocks, pages, rest);
    close_frame(ui, state, frame, pages.paging, asked);
}

} // namespace ui
