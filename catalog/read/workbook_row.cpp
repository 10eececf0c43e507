#include "catalog/read/workbook_row.h"

namespace catalog {

void WorkbookRow::put(std::size_t place, const std::string& text, std::optional<CellMark> mark)
{
    if (text.empty() && !mark)
        return;
    row_.cell_count = place + 1;
    if (place >= most_cells)
        return;
    row_.cells.resize(place + 1);
    row_.cells[place] = text;
    if (mark)
        row_.marks[place] = *mark;
}

const CsvRow& WorkbookRow::as(std::size_t number)
{
    row_.number = number;
    return row_;
}

void WorkbookRow::clear()
{
    row_.cells.clear();
    row_.marks.clear();
    row_.cell_count = 0;
}

} // namespace catalog
