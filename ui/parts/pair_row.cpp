#include "ui/parts/pair_row.h"

#include "ui/parts/say_side.h"
#include "ui/widgets/line_5_20.h"
#include "ui/widgets/pattern.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace ui {

bool has_line(const RowWords& row)
{
    return row.left.percent_value || row.right.percent_value;
}

float row_padding(const Ui& ui)
{
    return 0.75F * ui.look.sizes.unit;
}

namespace {

bool is_calories(const RowWords& row)
{
    return row.nutrient == core::Nutrient::Calories;
}

/// Words in place of a figure ("not printed") are not shouted.

Style amount_style(const Ui& ui, const RowWords& row)
{
    if (is_calories(row))
        return Style::Figure;
    return ui.look.sizes.crowded() ? Style::Note : Style::Strong;
}

Style percent_style(const Ui& ui)
{
    return ui.look.sizes.crowded() ? Style::Note : Style::Text;
}

/// Words in place of a figure ("not printed") are not shouted.
Style style_of(const Ui& ui, const RowWords& row, const FigureWords& figure)
{
    const bool digits = figure.amount.find_first_of("0123456789") != std::string::npos;
    return digits ? amount_style(ui, row) : Style::QuietNote;
}

/// Where all of a row stands in one line, long words ("Monounsaturated") are set smaller rather than taking the line's
/// room; elsewhere all names are of one size.
Style name_style(const Ui& ui, const RowWords& row, const TableWidths& widths)
{
    if (widths.form == RowForm::Tall && ui.look.sizes.crowded())
        return Style::Note;
    return widths.form == RowForm::Wide && widest_word(ui, row.name, Style::Text) > widths.table * 0.16F ? Style::Note
                                                                                                         : Style::Text;
}

float mark_room(const Ui& ui)
{
    return 3 * ui.look.sizes.unit;
}

float line_least(const Ui& ui)
{
    return 28 * ui.look.sizes.unit; // so that 5, 20 and 100 stand apart over it
}

/// The room for an amount: words without a percent take the percent's room too, where rows are not aligned anyway.
float amount_width(const Ui& ui, const RowWords& row, const FigureWords& words, const TableWidths& widths)
{
    const bool alone =
        widths.form == RowForm::Tall && words.percent.empty() && style_of(ui, row, words) == Style::QuietNote;
    return widths.amount + (alone ? 1.5F * ui.look.sizes.unit + widths.percent : 0);
}

float side_height(const Ui& ui, const RowWords& row, const FigureWords& words, const TableWidths& widths)
{
    if (is_calories(row))
        return line_height(ui, Style::Figure);
    return std::max(text_height(ui, words.amount, style_of(ui, row, words), amount_width(ui, row, words, widths)),
                    words.percent.empty() ? 0 : line_height(ui, percent_style(ui)));
}

/// Whether the two sides of a row stand one below the other: with the largest letters, where an amount such as "less
/// than 10 mg" would break in half of the width.
bool one_side_a_line(const Ui& ui, const RowWords& row, const TableWidths& widths)
{
    const auto breaks = [&](const FigureWords& words) {
        const float wanted = text_width(ui, words.amount, style_of(ui, row, words));
        // Calories reach to their left, where no line and no percent stands.
        return wanted > (is_calories(row) ? std::floor(widths.table / 2) - mark_room(ui) - 2 * ui.look.sizes.unit
                                          : amount_width(ui, row, words, widths));
    };
    return widths.form == RowForm::Tall && (breaks(row.left) || breaks(row.right));
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

/// Calories have no line between them, and with large letters stand in one line all the same where that holds them.
bool calories_in_a_line(const Ui& ui, const RowWords& row, const TableWidths& widths)
{
    const float letters = text_width(ui, row.name, Style::Text) + text_width(ui, row.finding, Style::Text) +
                          2 * std::max(text_width(ui, row.left.amount, style_of(ui, row, row.left)),
                                       text_width(ui, row.right.amount, style_of(ui, row, row.right)));
    return is_calories(row) && widths.form != RowForm::Wide &&
           letters + 2 * mark_room(ui) + 3 * widths.gap <= widths.table;
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
    if (is_calories(row))
        amount.low.x -= std::max(0.0F, text_width(ui, words.amount, style_of(ui, row, words)) - widths.amount);
    const float letters =
        std::min(text_width(ui, words.amount, style_of(ui, row, words)), amount.width() - mark_room(ui));
    mark(ui, side, {amount.high.x - letters - 2 * ui.look.sizes.unit, (area.low.y + area.high.y) / 2},
         0.9F * ui.look.sizes.unit);
    amount.cut_left(mark_room(ui));
    const std::size_t noted = ui.notes.size();
    centred(ui, words.amount, style_of(ui, row, words), amount, Align::Right, Role::Figure);
    say_side(ui, side, noted); // the mark says which side it is to the eye alone
    area.cut_left(1.5F * ui.look.sizes.unit);
    centred(ui, words.percent, percent_style(ui), area.cut_left(widths.percent), Align::Right, Role::Figure);
}

void line(const Ui& ui, const RowWords& row, const Area& area)
{
    if (has_line(row))
        line_5_20(ui, area, row.left.percent_value, row.right.percent_value);
}

void figures_and_line(const Ui& ui, const RowWords& row, Area area, const TableWidths& widths)
{
    figure(ui, Side::Left, row, area.cut_left(side_width(ui, widths)), widths);
    Area right = area.cut_right(side_width(ui, widths));
    line(ui, row, area.inset(widths.gap, 0));
    figure(ui, Side::Right, row, right, widths);
}

void draw_calories(const Ui& ui, const RowWords& row, Area area, const TableWidths& widths)
{
    const auto cut = [&](const std::string& words, Style style) { return text_width(ui, words, style); };
    centred(ui, row.name, Style::Text, area.cut_left(cut(row.name, Style::Text)), Align::Left, Role::Text);
    const Area last = area.cut_right(cut(row.finding, Style::Text));
    area = area.inset(widths.gap, 0);
    TableWidths own = widths;
    own.amount = std::max(cut(row.left.amount, style_of(ui, row, row.left)),
                          cut(row.right.amount, style_of(ui, row, row.right)));
    own.percent = 0;
    const float side = std::min(mark_room(ui) + own.amount, std::floor(area.width() / 2));
    const float spare = std::max(0.0F, std::floor((area.width() - 2 * side) / 3));
    area.cut_left(spare);
    figure(ui, Side::Left, row, area.cut_left(side), own);
    area.cut_right(spare);
    figure(ui, Side::Right, row, area.cut_right(side), own);
    centred(ui, row.finding, Style::Text, last, Align::Right, Role::Text);
}

struct Wanted {
    float name = 0; ///< longest name in one line
    float name_word = 0;
    float amount = 0;
    float percent = 0;
    float finding = 0;
    float finding_word = 0;
};

/// The least width in which these words take two lines at most.
float two_lines_width(const Ui& ui, std::string_view words, Style style)
{
    float least = text_width(ui, words, style);
    for (auto blank = words.find(' '); blank != words.npos; blank = words.find(' ', blank + 1))
        least = std::min(least, std::max(text_width(ui, words.substr(0, blank), style),
                                         text_width(ui, words.substr(blank + 1), style)));
    return std::max(least, widest_word(ui, words, style));
}

Wanted wanted_by(const Ui& ui, const std::vector<RowWords>& rows, const TableWidths& widths)
{
    Wanted wanted;
    for (const auto& row : rows) {
        const Style name = name_style(ui, row, widths);
        wanted.name = std::max(wanted.name, text_width(ui, row.name, name));
        wanted.name_word = std::max(wanted.name_word, widest_word(ui, row.name, name));
        for (const auto* figure : {&row.left, &row.right}) {
            const Style style = style_of(ui, row, *figure);
            // "less than 1 g" and "not printed" may take two lines; figures with their unit may not.
            const bool words = style == Style::QuietNote || figure->amount.size() > 9;
            // Calories are set large and reach to their left, where no line and no percent stands.
            if (is_calories(row))
                continue;
            wanted.amount = std::max(wanted.amount, words ? two_lines_width(ui, figure->amount, style)
                                                          : text_width(ui, figure->amount, style));
            wanted.percent = std::max(wanted.percent, text_width(ui, figure->percent, percent_style(ui)));
        }
        wanted.finding = std::max(wanted.finding, text_width(ui, row.finding, widths.finding_style));
        wanted.finding_word = std::max(wanted.finding_word, widest_word(ui, row.finding, widths.finding_style));
    }
    return wanted;
}

} // namespace

float side_width(const Ui& ui, const TableWidths& widths)
{
    return mark_room(ui) + widths.amount + 1.5F * ui.look.sizes.unit + widths.percent;
}

float row_height(const Ui& ui, const RowWords& row, const TableWidths& widths)
{
    if (calories_in_a_line(ui, row, widths) || (is_calories(row) && widths.form == RowForm::Wide))
        return std::max(
            {line_height(ui, Style::Figure), line_height(ui, Style::Text),
             widths.form == RowForm::Wide ? text_height(ui, row.finding, widths.finding_style, widths.finding) : 0});
    const float figures = std::max(figure_height(ui, row, widths), line_5_20_height(ui));
    const float name = text_height(ui, row.name, name_style(ui, row, widths), widths.name);
    const float finding = text_height(ui, row.finding, widths.finding_style, widths.finding);
    const float height = 2 * row_padding(ui);
    if (widths.form == RowForm::Wide)
        return height + std::max({figures, name, finding});
    if (widths.form == RowForm::TwoLines)
        return height + std::max(name, finding) + figures;
    return height + name + finding + figure_height(ui, row, widths) + (has_line(row) ? line_5_20_height(ui) : 0);
}

void draw_row(const Ui& ui, const RowWords& row, Area area, const TableWidths& widths)
{
    const float width = area.width();
    canvas().AddLine(area.low, {area.high.x, area.low.y}, ui.look.theme.hairline, 0.5F * ui.look.sizes.line);
    if (calories_in_a_line(ui, row, widths)) {
        draw_calories(ui, row, area, widths);
        return;
    }
    Area rest = area.inset(0, is_calories(row) && widths.form == RowForm::Wide ? 0 : row_padding(ui));
    const float figures = std::max(figure_height(ui, row, widths), line_5_20_height(ui));
    const float name = text_height(ui, row.name, name_style(ui, row, widths), widths.name);
    const float finding = text_height(ui, row.finding, widths.finding_style, widths.finding);
    if (widths.form == RowForm::Wide) {
        Area all = rest.cut_top(std::max({figures, name, finding}));
        centred(ui, row.name, name_style(ui, row, widths), all.cut_left(widths.name), Align::Left, Role::Text);
        Area last = all.cut_right(widths.finding);
        all.cut_right(widths.gap);
        figures_and_line(ui, row, all, widths);
        centred(ui, row.finding, widths.finding_style, last, Align::Left, Role::Text);
    } else if (widths.form == RowForm::TwoLines) {
        Area first = rest.cut_top(std::max(name, finding));
        text(ui, row.name, name_style(ui, row, widths), first.cut_left(widths.name));
        text(ui, row.finding, Style::Text, first.cut_right(widths.finding), Align::Right);
        figures_and_line(ui, row, rest.cut_top(figures), widths);
    } else {
        text(ui, row.name, name_style(ui, row, widths), rest.cut_top(name));
        Area both = rest.cut_top(figure_height(ui, row, widths));
        if (one_side_a_line(ui, row, widths)) {
            const TableWidths whole = whole_width(ui, widths);
            figure(ui, Side::Left, row, both.cut_top(side_height(ui, row, row.left, whole)), whole);
            figure(ui, Side::Right, row, both, whole);
        } else {
            TableWidths own = widths;
            if (is_calories(row)) // set large, and each side has half of the row
                own.amount = std::max({widths.amount, text_width(ui, row.left.amount, style_of(ui, row, row.left)),
                                       text_width(ui, row.right.amount, style_of(ui, row, row.right))});
            figure(ui, Side::Left, row, both.cut_left(std::floor(width / 2)), own);
            figure(ui, Side::Right, row, both, own);
        }
        if (has_line(row))
            line(ui, row, rest.cut_top(line_5_20_height(ui)));
        text(ui, row.finding, widths.finding_style, rest.cut_top(finding));
    }
}

TableWidths table_widths(const Ui& ui, const std::vector<RowWords>& rows, float width)
{
    TableWidths widths;
    widths.table = width;
    widths.gap = 1.5F * ui.look.sizes.unit;
    Wanted wanted = wanted_by(ui, rows, widths);
    widths.amount = wanted.amount;
    widths.percent = wanted.percent;
    const float sides = 2 * side_width(ui, widths);
    // Names give way first, then the letters of the findings, and only then may a finding break, so that a row stays
    // one line high.
    struct Shares {
        Style style;
        float name;
        float finding;
    };
    for (const Shares share : {Shares{Style::Text, 0.24F, 1},
                               {Style::Text, 0.2F, 1},
                               {Style::Text, 0.17F, 1},
                               {Style::Note, 0.2F, 1},
                               {Style::Note, 0.17F, 1},
                               {Style::Note, 0.14F, 0.13F}}) {
        widths.finding_style = share.style;
        wanted = wanted_by(ui, rows, widths);
        widths.name = std::max(wanted.name_word, std::min(wanted.name, width * share.name)) + widths.gap;
        widths.finding = std::max(wanted.finding_word, std::min(wanted.finding, width * share.finding));
        widths.line = width - widths.name - sides - widths.finding - 3 * widths.gap;
        if (widths.line >= line_least(ui))
            return widths;
    }
    widths.finding_style = Style::Text;
    widths.form = RowForm::TwoLines;
    wanted = wanted_by(ui, rows, widths);
    widths.line = width - sides - 2 * widths.gap;
    const float longest_name = width * 0.5F - widths.gap;
    widths.name = std::max(wanted.name_word, std::min(wanted.name, longest_name));
    widths.finding = std::max(wanted.finding_word, std::min(wanted.finding, width - widths.name - widths.gap));
    if (widths.line >= line_least(ui) && widths.name + widths.finding + widths.gap <= width)
        return widths;
    widths.form = RowForm::Tall;
    widths.finding_style = ui.look.sizes.crowded() ? Style::Note : Style::Text;
    widths.name = width;
    widths.finding = width;
    widths.line = width;
    widths.amount = std::min(wanted.amount, width / 2 - mark_room(ui) - widths.percent - 2 * ui.look.sizes.unit);
    return widths;
}

} // namespace ui
