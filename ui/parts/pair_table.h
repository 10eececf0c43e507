// The rows of a pair: name, both figures, the 5-20 line and the finding, in as few lines as the letters allow.
#pragma once

#include "ui/look/grid.h"
#include "ui/state.h"
#include "ui/ui.h"
#include "ui/widgets/pages.h"

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
    float gap = 0;
};

/// Chooses the form and the widths so that no word of any row is cut.
[[nodiscard]] TableWidths table_widths(const Ui& ui, const std::vector<RowWords>& rows, float width);

/// The rows as blocks for pages, with their headings ("Less of", "More of", the rest). `rows` must outlive them.
[[nodiscard]] std::vector<Block> table_blocks(const Ui& ui, const std::vector<RowWords>& rows, float width);

} // namespace ui
