// The header row of a sheet: which separator the file uses, and which column each place in a row belongs to.
#pragma once

#include "catalog/read/csv.h"
#include "catalog/read/faults.h"
#include "catalog/read/sheet_columns.h"

#include <string>
#include <string_view>
#include <vector>

namespace catalog {

/// What the header row says.
struct SheetHeader {
    std::vector<std::string> names;          ///< by place, as written; empty where there is none
    std::vector<const SheetColumn*> columns; ///< by place; nothing where the name is no column's
    /// Whether any place belongs to this column.
    [[nodiscard]] bool has(Field field) const;
};

/// Comma, semicolon or tab: the one with which the first row has most names that are known; the comma when none has.
[[nodiscard]] char find_separator(std::string_view text);

/// How many columns of a sheet this row names.
[[nodiscard]] std::size_t known_names(const CsvRow& row);

/// Whether this row names the column of product numbers, as a header of a sheet does.
[[nodiscard]] bool names_gtin(const CsvRow& row);

/// Reads the header row. Faults, each naming its column: UnknownColumn (with the nearest name), DoubledValue,
/// MissingColumn, TooLarge (more places than a sheet has).
[[nodiscard]] SheetHeader read_header(const CsvRow& row, const std::string& source, Faults& faults);

/// How a column is called that has no name: "number 7 (G)", as a spreadsheet letters it. `place` counts from 0.
[[nodiscard]] std::string column_by_place(std::size_t place);

} // namespace catalog
