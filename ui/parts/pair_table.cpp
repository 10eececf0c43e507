#include "ui/parts/pair_table.h"

#include "ui/parts/pair_row.h"
#include "ui/parts/sentences.h"
#include "ui/widgets/button.h"
#include "ui/widgets/line_5_20.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <memory>
#include <optional>
#include <string>
#include <utility>

namespace ui {
namespace {

/// What must be said beside a row: in one line where that holds it, else one below the other.
std::vector<std::string> remark_lines(const Ui& ui, const RowWords& row, float width)
{
    std::string joined;
    for (const auto& remark : row.remarks)
        joined += (joined.empty() ? "" : "   ") + remark;
    if (joined.empty() || text_width(ui, joined, Style::QuietNote) > width)
        return row.remarks;
    return {joined};
}

/// The remarks close below their row, each a block of its own.
void add_remarks(const Ui& ui, const std::vector<std::string>& lines, float width, std::vector<Block>& blocks)
{
    if (lines.empty())
        return;
    blocks.back().with_next = true;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        add_words(ui, lines[i], Style::QuietNote, Role::Text, width, i == 0 ? -row_padding(ui) : 0, blocks);
        blocks.back().with_next = i + 1 < lines.size();
    }
    blocks.back().height += row_padding(ui) / 2;
}

std::optional<TextId> heading_of(const RowWords& row)
{
    if (row.nutrient == core::Nutrient::Calories)
        return std::nullopt;
    if (row.first)
        return TextId::heading_first;
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
    if (widths.form == RowForm::Tall)
        return area;
    if (widths.form == RowForm::TwoLines)
        return area.inset(side_width(ui, widths) + widths.gap, 0);
    area.cut_left(widths.name + side_width(ui, widths));
    area.cut_right(widths.finding + widths.gap + side_width(ui, widths));
    return area.inset(widths.gap, 0);
}

/// The heading of a group, once more on every page that goes on with it; with the scale where the group has lines.
struct Heading {
    std::string words;
    bool scale = false;
    bool below = false; ///< the scale needs a line of its own because the words reach into it
    float height = 0;
    std::string hint = {}; ///< said beside it, over the findings; may be empty
};

Heading heading_as(const Ui& ui, std::string words, bool scale, const TableWidths& widths)
{
    Heading heading{std::move(words), scale, false, 0};
    const Area place = scale_area(ui, {{0, 0}, {widths.table, 0}}, widths);
    heading.below =
        scale && text_width(ui, heading.words, Style::Strong) + ui.look.sizes.unit > line_5_20_scale_begin(ui, place);
    heading.height = text_height(ui, heading.words, Style::Strong, widths.table) + ui.look.sizes.unit / 2 +
                     (heading.below ? line_height(ui, Style::Note) : 0);
    return heading;
}

/// "Less of (continued)"; without that word where it would cost a line.
Heading continued(const Ui& ui, const std::string& words, bool scale, const TableWidths& widths)
{
    Heading full = heading_as(ui, ui.language.fill(TextId::heading_continued, {{"heading", words}}), scale, widths);
    Heading shorter = heading_as(ui, words, scale, widths);
    return full.height > shorter.height ? shorter : full;
}

/// Whether the words fit over the findings.
bool hint_fits(const Ui& ui, const std::string& words, const TableWidths& widths)
{
    return widths.form == RowForm::Wide &&
           text_width(ui, words, Style::QuietNote) <= widths.finding + widths.gap + side_width(ui, widths);
}

void hint(const Ui& ui, const std::string& words, Area area, const TableWidths& widths)
{
    area = area.cut_right(widths.finding + widths.gap + side_width(ui, widths));
    area.low.y = area.high.y - line_height(ui, Style::QuietNote);
    text(ui, words, Style::QuietNote, area, Align::Right);
}

Block quiet(const Ui& ui, const std::string& words, float width)
{
    return {text_height(ui, words, Style::QuietNote, width),
            [&ui, &words](const Area& area) { text(ui, words, Style::QuietNote, area); }, false, ui.look.sizes.unit};
}

Block block_of(const Ui& ui, Heading heading, const TableWidths& widths)
{
    const float height = heading.height;
    return {height,
            [&ui, heading = std::move(heading), widths](Area area) {
                text(ui, heading.words, Style::Strong, area, Align::Left, Role::Heading);
                if (!heading.hint.empty())
                    hint(ui, heading.hint, area, widths);
                if (!heading.scale)
                    return;
                area.low.y = area.high.y - line_height(ui, Style::Note);
                line_5_20_scale(ui, scale_area(ui, area, widths));
            },
            true, ui.look.sizes.unit / 2};
}

/// A row that can be touched: as high as a finger needs. A low one takes its remarks into the same piece.
void add_row(const Ui& ui, const RowWords& row, const TableWidths& widths, float width, std::vector<Block>& blocks,
             Actions& asked)
{
    const float own = row_height(ui, row, widths);
    auto lines = remark_lines(ui, row, width);
    const bool inside = own - row_padding(ui) < ui.look.sizes.target;
    const float apart = inside || lines.empty() ? 0 : row_padding(ui); // remarks of a high row begin inside it
    float height = own;
    if (inside && !lines.empty())
        height -= row_padding(ui) / 2;
    for (const auto& line : lines)
        height += inside ? text_height(ui, line, Style::QuietNote, width) : 0;
    height = std::max(height, ui.look.sizes.target);
    blocks.push_back(
        {height,
         [&ui, &row, &asked, widths, own, apart, said = inside ? lines : std::vector<std::string>{}](const Area& area) {
             const std::size_t first_note = ui.notes.size();
             Area rest = area;
             draw_row(ui, row, {rest.low, {rest.high.x, rest.low.y + own}}, widths);
             rest.cut_top(own - row_padding(ui));
             for (const auto& line : said)
                 rest.cut_top(text(ui, line, Style::QuietNote, rest));
             Area touch = area;
             touch.high.y -= apart;
             if (touched(ui, TextId::why_hint, touch, first_note))
                 asked.push_back(OpenWhy{row.nutrient, std::nullopt});
         },
         false, 0});
    if (!inside)
        add_remarks(ui, lines, width, blocks);
}

} // namespace

std::vector<Block> table_blocks(const Ui& ui, const PairWords& pair, float width, Actions& asked)
{
    const auto& rows = pair.rows;
    const TableWidths widths = table_widths(ui, rows, width);
    std::vector<Block> blocks;
    std::optional<TextId> heading;
    bool hinted = false;
    const std::string& touch = ui.language.text(TextId::why_hint);
    const bool guided = !pair.guide.empty() && hint_fits(ui, pair.guide, widths);
    std::shared_ptr<const Block> again;
    for (const auto& row : rows) {
        const auto own = heading_of(row);
        if (own && own != heading) {
            if (!pair.guide.empty() && !guided && !again)
                blocks.push_back(quiet(ui, pair.guide, width));
            const auto& words = ui.language.text(*own);
            const bool scale = std::ranges::any_of(
                rows, [&](const RowWords& other) { return heading_of(other) == own && has_line(other); });
            Heading own_heading = heading_as(ui, words, scale, widths);
            if (guided || (!hinted && hint_fits(ui, touch, widths)))
                own_heading.hint = guided ? pair.guide : touch;
            hinted = hinted || (!guided && !own_heading.hint.empty());
            blocks.push_back(block_of(ui, std::move(own_heading), widths));
            again = std::make_shared<const Block>(block_of(ui, continued(ui, words, scale, widths), widths));
        }
        heading = own;
        const std::size_t first = blocks.size();
        add_row(ui, row, widths, width, blocks, asked);
        for (std::size_t i = first; i < blocks.size() && own; ++i)
            blocks[i].again = again;
    }
    if (!hinted && !rows.empty())
        blocks.push_back(quiet(ui, touch, width));
    return blocks;
}

} // namespace ui
