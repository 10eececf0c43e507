#include "ui/parts/pair_table.h"

#include "ui/widgets/line_5_20.h"
#include "ui/widgets/pattern.h"
#include "ui/widgets/text.h"

#include <cmath>
#include <optional>

namespace ui {
namespace {

Style amount_style(const RowWords& row)
{
    return row.nutrient == core::Nutrient::Calories ? Style::Figure : Style::Strong;
}

/// Words in place of a figure ("not printed") are not shouted.
Style style_of(const RowWords& row, const FigureWords& figure)
{
    const bool digits = figure.amount.find_first_of("0123456789") != std::string::npos;
    return digits ? amount_style(row) : Style::QuietNote;
}

/// Long words ("Monounsaturated") are set smaller rather than taking the line's room.
Style name_style(const Ui& ui, const RowWords& row, float width)
{
    return widest_word(ui, row.name, Style::Text) > width * 0.16F ? Style::Note : Style::Text;
}

float mark_room(const Ui& ui)
{
    return 3 * ui.look.sizes.unit;
}

float line_least(const Ui& ui)
{
    return 30 * ui.look.sizes.unit;
}

float padding(const Ui& ui)
{
    return ui.look.sizes.unit;
}

/// The room for an amount: words without a percent take the percent's room too, where rows are not aligned anyway.
float amount_width(const Ui& ui, const RowWords& row, const FigureWords& words, const TableWidths& widths)
{
    const bool alone =
        widths.form == RowForm::Tall && words.percent.empty() && style_of(row, words) == Style::QuietNote;
    return widths.amount + (alone ? 1.5F * ui.look.sizes.unit + widths.percent : 0);
}

float side_height(const Ui& ui, const RowWords& row, const FigureWords& words, const TableWidths& widths)
{
    if (row.nutrient == core::Nutrient::Calories)
        return line_height(ui, Style::Figure);
    return std::max(text_height(ui, words.amount, style_of(row, words), amount_width(ui, row, words, widths)),
                    words.percent.empty() ? 0 : line_height(ui, Style::Text));
}

/// Whether the two sides of a row stand one below the other: with the largest letters, where an amount such as "less
/// than 10 mg" would break in half of the width.
bool one_side_a_line(const Ui& ui, const RowWords& row, const TableWidths& widths)
{
    const auto breaks = [&](const FigureWords& words) {
        return text_width(ui, words.amount, style_of(row, words)) > amount_width(ui, row, words, widths);
    };
    return widths.form == RowForm::Tall && row.nutrient != core::Nutrient::Calories &&
           (breaks(row.left) || breaks(row.right));
}

/// The widths of such a row: all of it for one side.
TableWidths whole_width(const Ui& ui, TableWidths widths)
{
    widths.amount = widths.table - mark_room(ui) - widths.percent - 2 * ui.look.sizes.unit;
    return widths;
}

float figure_height(const Ui& ui, const RowWords& row, const TableWidths& widths)
{
    if (one_side_a_line(ui, row, widths)) {
        const TableWidths whole = whole_width(ui, widths);
        return side_height(ui, row, row.left, whole) + side_height(ui, row, row.right, whole);
    }
    return std::max(side_height(ui, row, row.left, widths), side_height(ui, row, row.right, widths));
}

float row_height(const Ui& ui, const RowWords& row, const TableWidths& widths)
{
    const float figures = std::max(figure_height(ui, row, widths), line_5_20_height(ui));
    const float name = text_height(ui, row.name, name_style(ui, row, widths.table), widths.name);
    const float finding = text_height(ui, row.finding, Style::Text, widths.finding);
    const float height = 2 * padding(ui);
    if (widths.form == RowForm::Wide)
        return height + std::max({figures, name, finding});
    if (widths.form == RowForm::TwoLines)
        return height + std::max(name, finding) + figures;
    return height + name + finding + figure_height(ui, row, widths) +
           (row.left.percent_value || row.right.percent_value ? line_5_20_height(ui) : 0);
}

/// Sets words in the middle of a line's height, so that letters of unlike sizes sit together.
void centred(const Ui& ui, const std::string& words, Style style, Area area, Align align, Role role)
{
    area.low.y += std::max(0.0F, std::floor((area.height() - text_height(ui, words, style, area.width())) / 2));
    text(ui, words, style, area, align, role);
}

/// Mark, amount and percent of one side; the mark stands close to its figure.
void figure(const Ui& ui, Side side, const RowWords& row, Area area, const TableWidths& widths)
{
    const auto& words = side == Side::Left ? row.left : row.right;
    Area amount = area.cut_left(mark_room(ui) + amount_width(ui, row, words, widths));
    if (row.nutrient == core::Nutrient::Calories)
        amount.low.x -= std::max(0.0F, text_width(ui, words.amount, style_of(row, words)) - widths.amount);
    const float letters = std::min(text_width(ui, words.amount, style_of(row, words)), amount.width() - mark_room(ui));
    mark(ui, side, {amount.high.x - letters - 2 * ui.look.sizes.unit, (area.low.y + area.high.y) / 2},
         0.9F * ui.look.sizes.unit);
    amount.cut_left(mark_room(ui));
    centred(ui, words.amount, style_of(row, words), amount, Align::Right, Role::Figure);
    area.cut_left(1.5F * ui.look.sizes.unit);
    centred(ui, words.percent, Style::Text, area.cut_left(widths.percent), Align::Right, Role::Figure);
}

float side_width(const Ui& ui, const TableWidths& widths)
{
    return mark_room(ui) + widths.amount + 1.5F * ui.look.sizes.unit + widths.percent;
}

void line(const Ui& ui, const RowWords& row, const Area& area)
{
    if (row.left.percent_value || row.right.percent_value)
        line_5_20(ui, area, row.left.percent_value, row.right.percent_value);
}

void figures_and_line(const Ui& ui, const RowWords& row, Area area, const TableWidths& widths)
{
    figure(ui, Side::Left, row, area.cut_left(side_width(ui, widths)), widths);
    Area right = area.cut_right(side_width(ui, widths));
    line(ui, row, area.inset(widths.gap, 0));
    figure(ui, Side::Right, row, right, widths);
}

void draw_row(const Ui& ui, const RowWords& row, Area area, const TableWidths& widths)
{
    const float width = area.width();
    canvas().AddLine(area.low, {area.high.x, area.low.y}, ui.look.theme.hairline, 0.5F * ui.look.sizes.line);
    Area rest = area.inset(0, padding(ui));
    const float figures = std::max(figure_height(ui, row, widths), line_5_20_height(ui));
    const float name = text_height(ui, row.name, name_style(ui, row, widths.table), widths.name);
    const float finding = text_height(ui, row.finding, Style::Text, widths.finding);
    if (widths.form == RowForm::Wide) {
        Area all = rest.cut_top(std::max({figures, name, finding}));
        centred(ui, row.name, name_style(ui, row, widths.table), all.cut_left(widths.name), Align::Left, Role::Text);
        Area last = all.cut_right(widths.finding);
        all.cut_right(widths.gap);
        figures_and_line(ui, row, all, widths);
        centred(ui, row.finding, Style::Text, last, Align::Left, Role::Text);
    } else if (widths.form == RowForm::TwoLines) {
        Area first = rest.cut_top(std::max(name, finding));
        text(ui, row.name, name_style(ui, row, widths.table), first.cut_left(widths.name));
        text(ui, row.finding, Style::Text, first.cut_right(widths.finding), Align::Right);
        figures_and_line(ui, row, rest.cut_top(figures), widths);
    } else {
        text(ui, row.name, name_style(ui, row, widths.table), rest.cut_top(name));
        Area both = rest.cut_top(figure_height(ui, row, widths));
        if (one_side_a_line(ui, row, widths)) {
            const TableWidths whole = whole_width(ui, widths);
            figure(ui, Side::Left, row, both.cut_top(side_height(ui, row, row.left, whole)), whole);
            figure(ui, Side::Right, row, both, whole);
        } else {
            figure(ui, Side::Left, row, both.cut_left(std::floor(width / 2)), widths);
            figure(ui, Side::Right, row, both, widths);
        }
        if (row.left.percent_value || row.right.percent_value)
            line(ui, row, rest.cut_top(line_5_20_height(ui)));
        text(ui, row.finding, Style::Text, rest.cut_top(finding));
    }
}

/// What must be said beside a row: in one line where that holds it, else one below the other.
void add_remarks(const Ui& ui, const RowWords& row, float width, std::vector<Block>& blocks)
{
    std::string joined;
    for (const auto& remark : row.remarks)
        joined += (joined.empty() ? "" : "   ") + remark;
    if (joined.empty())
        return;
    blocks.back().with_next = true;
    std::vector<std::string> lines{joined};
    if (text_width(ui, joined, Style::QuietNote) > width)
        lines = row.remarks;
    for (std::size_t i = 0; i < lines.size(); ++i)
        blocks.push_back({text_height(ui, lines[i], Style::QuietNote, width) + (i + 1 < lines.size() ? 0 : padding(ui)),
                          [&ui, words = lines[i]](const Area& area) { text(ui, words, Style::QuietNote, area); },
                          i + 1 < lines.size(), 0});
}

std::optional<TextId> heading_of(const RowWords& row)
{
    if (row.nutrient == core::Nutrient::Calories)
        return std::nullopt;
    switch (row.aim) {
    case core::Aim::Less:
        return TextId::heading_less_of;
    case core::Aim::More:
        return TextId::heading_more_of;
    case core::Aim::Neither:
        break;
    }
    return TextId::heading_other;
}

/// Where the rows below a heading have their lines.
Area scale_area(const Ui& ui, Area area, const TableWidths& widths)
{
    if (widths.form == RowForm::TwoLines)
        return area.inset(side_width(ui, widths) + widths.gap, 0);
    area.cut_left(widths.name + side_width(ui, widths));
    area.cut_right(widths.finding + widths.gap + side_width(ui, widths));
    return area.inset(widths.gap, 0);
}

/// Whether the scale needs a line of its own because the heading reaches into it.
bool scale_below(const Ui& ui, const std::string& heading, const TableWidths& widths)
{
    if (widths.form == RowForm::Tall)
        return false;
    const Area scale = scale_area(ui, {{0, 0}, {widths.table, 0}}, widths);
    return text_width(ui, heading, Style::Strong) + ui.look.sizes.unit > line_5_20_scale_begin(ui, scale);
}

float heading_height(const Ui& ui, const std::string& heading, const TableWidths& widths)
{
    return text_height(ui, heading, Style::Strong, widths.table) + ui.look.sizes.unit +
           (scale_below(ui, heading, widths) ? line_height(ui, Style::Note) : 0);
}

void draw_heading(const Ui& ui, const std::string& heading, Area area, const TableWidths& widths)
{
    area.cut_top(ui.look.sizes.unit);
    text(ui, heading, Style::Strong, area, Align::Left, Role::Heading);
    if (widths.form == RowForm::Tall)
        return; // every line is then as wide as the page, and the words take the room
    area.low.y = area.high.y - line_height(ui, Style::Note);
    line_5_20_scale(ui, scale_area(ui, area, widths));
}

struct Wanted {
    float name = 0; ///< longest name in one line
    float name_word = 0;
    float amount = 0;
    float percent = 0;
    float finding = 0;
    float finding_word = 0;
};

Wanted wanted_by(const Ui& ui, const std::vector<RowWords>& rows, float width)
{
    Wanted wanted;
    for (const auto& row : rows) {
        const Style name = name_style(ui, row, width);
        wanted.name = std::max(wanted.name, text_width(ui, row.name, name));
        wanted.name_word = std::max(wanted.name_word, widest_word(ui, row.name, name));
        for (const auto* figure : {&row.left, &row.right}) {
            const Style style = style_of(row, *figure);
            // "less than 1 g" and "not printed" may take two lines; figures with their unit may not.
            const bool words = style == Style::QuietNote || figure->amount.size() > 9;
            // Calories are set large and reach to their left, where no line and no percent stands.
            if (row.nutrient == core::Nutrient::Calories)
                continue;
            wanted.amount = std::max(wanted.amount, words ? widest_word(ui, figure->amount, style)
                                                          : text_width(ui, figure->amount, style));
            wanted.percent = std::max(wanted.percent, text_width(ui, figure->percent, Style::Text));
        }
        wanted.finding = std::max(wanted.finding, text_width(ui, row.finding, Style::Text));
        wanted.finding_word = std::max(wanted.finding_word, widest_word(ui, row.finding, Style::Text));
    }
    return wanted;
}

} // namespace

TableWidths table_widths(const Ui& ui, const std::vector<RowWords>& rows, float width)
{
    const Wanted wanted = wanted_by(ui, rows, width);
    TableWidths widths;
    widths.table = width;
    widths.gap = 2 * ui.look.sizes.unit;
    widths.amount = wanted.amount;
    widths.percent = wanted.percent;
    const float sides = 2 * side_width(ui, widths);
    // Names and findings give way, first a little, then down to their longest word, so that a row stays one line high.
    struct Shares {
        float name;
        float finding;
    };
    for (const Shares share : {Shares{0.24F, 0.26F}, {0.2F, 0.18F}, {0.17F, 0.15F}, {0.14F, 0.13F}}) {
        widths.name = std::max(wanted.name_word, std::min(wanted.name, width * share.name)) + widths.gap;
        widths.finding = std::max(wanted.finding_word, std::min(wanted.finding, width * share.finding));
        widths.line = width - widths.name - sides - widths.finding - 3 * widths.gap;
        if (widths.line >= line_least(ui))
            return widths;
    }
    widths.form = RowForm::TwoLines;
    widths.line = width - sides - 2 * widths.gap;
    const float longest_name = width * 0.5F - widths.gap;
    widths.name = std::max(wanted.name_word, std::min(wanted.name, longest_name));
    widths.finding = std::max(wanted.finding_word, std::min(wanted.finding, width - widths.name - widths.gap));
    if (widths.line >= line_least(ui) && widths.name + widths.finding + widths.gap <= width)
        return widths;
    widths.form = RowForm::Tall;
    widths.name = width;
    widths.finding = width;
    widths.line = width;
    widths.amount = std::min(wanted.amount, width / 2 - mark_room(ui) - widths.percent - 2 * ui.look.sizes.unit);
    return widths;
}

std::vector<Block> table_blocks(const Ui& ui, const std::vector<RowWords>& rows, float width)
{
    const TableWidths widths = table_widths(ui, rows, width);
    std::vector<Block> blocks;
    std::optional<TextId> heading;
    for (const auto& row : rows) {
        const auto own = heading_of(row);
        if (own && own != heading)
            blocks.push_back(
                {heading_height(ui, ui.language.text(*own), widths),
                 [&ui, id = *own, widths](const Area& area) { draw_heading(ui, ui.language.text(id), area, widths); },
                 true, ui.look.sizes.unit});
        heading = own;
        blocks.push_back({row_height(ui, row, widths),
                          [&ui, &row, widths](const Area& area) { draw_row(ui, row, area, widths); }, false, 0});
        add_remarks(ui, row, width, blocks);
    }
    return blocks;
}

} // namespace ui
