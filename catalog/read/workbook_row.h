// A row of a workbook as it grows, cell by cell: limits on its width, and what a repeated cell is worth.
#pragma once

#include "catalog/read/csv.h"

#include <cstddef>
#include <optional>
#include <string>

namespace catalog {

/// A row under way.
class WorkbookRow {
public:
    /// Puts a filled cell at this place (from 0), which is behind all others so far.
    void put(std::size_t place, const std::string& text, std::optional<CellMark> mark);

    /// Whether a cell was put.
    [[nodiscard]] bool filled() const { return row_.cell_count > 0; }

    /// The row as it is, with this number.
    [[nodiscard]] const CsvRow& as(std::size_t number);

    /// Begins the next row.
    void clear();

private:
    CsvRow row_;
};

} // namespace catalog
