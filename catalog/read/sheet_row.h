// One row of a sheet to one product, with a fault for every cell that is wrong.
#pragma once

#include "catalog/read/csv.h"
#include "catalog/read/faults.h"
#include "catalog/read/sheet_header.h"
#include "core/product.h"

#include <optional>
#include <string>

namespace catalog {

/// What holds for all rows of a sheet.
struct SheetReading {
    std::string source;            ///< the file as the user named it
    std::string file_name;         ///< without folders: what a product remembers
    bool comma_is_decimal = false; ///< the separator is another sign than the comma
    SheetHeader header;
};

/// Whether no cell of the row holds anything: such rows are no products.
[[nodiscard]] bool is_empty(const CsvRow& row);

/// What could be read of a row.
struct RowRead {
    std::optional<core::Gtin> gtin;       ///< also of a row with a fault elsewhere
    std::string gtin_cell;                ///< as it stands in the sheet
    std::optional<core::Product> product; ///< nothing when the row has a fault
};

/// Reads a row and adds its faults.
[[nodiscard]] RowRead read_row(const CsvRow& row, const SheetReading& sheet, Faults& faults);

} // namespace catalog
