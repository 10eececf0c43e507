// One row of a pair: name, both figures, the 5-20 line and the finding, in as few lines as the letters allow.
#pragma once

#include "ui/look/grid.h"
#include "ui/ui.h"
#include "ui/widgets/text.h"
#include "ui/words/pair_words.h"

#include <vector>

namespace ui {

/// How a row is set: all in one line; name and finding over figures and line; or each on its own.
enum class RowForm { Wide, TwoLines, Tall };

/// The widths that hold for all rows of one table.
struct TableWidths {
    RowForm form = RowForm::Wide;
    float table = 0; ///< of the whole row
    float name = 0;
    float amount = 0;
    float percent = 0;
    float line = 0;
    float finding = 0;
    Style finding_style = Style::Text; ///< smaller where a finding would break otherwise
    float gap = 0;
};

/// Chooses the form and the widths so that no word of any row is cut.
[[nodiscard]] TableWidths table_widths(const Ui& ui, const std::vector<RowWords>& rows, float width);

/// Whether a row has a 5-20 line.
[[nodiscard]] bool has_line(const RowWords& row);

/// The room above and below what stands in a row, in pixels.
[[nodiscard]] float row_padding(const Ui& ui);

/// The width of mark, amount and percent of one side.
[[nodiscard]] float side_width(const Ui& ui, const TableWidths& widths);

/// The height that a row wants.
[[nodiscard]] float row_height(const Ui& ui, const RowWords& row, const TableWidths& widths);

/// Draws a row below a hairline.
void draw_row(const Ui& ui, const RowWords& row, Area area, const TableWidths& widths);

} // namespace ui
