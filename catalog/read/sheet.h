// A sheet (CSV or workbook), one product a row, to products and to all that is wrong with it, in one go. docs/sheet.md
// explains the columns.
#pragma once

#include "catalog/read/faults.h"
#include "core/product.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace catalog {

/// What a sheet holds.
struct Sheet {
    std::vector<core::Product> products; ///< the rows without a fault; none when the file or its header has one
    std::size_t refused_rows = 0;        ///< the other rows, as far as they could be told apart
    Faults faults;
    std::string tab;                     ///< of a workbook: the name of the sheet that was read
    std::vector<std::string> other_tabs; ///< of a workbook: names of sheets that have our columns too and were not read
};

constexpr std::size_t largest_sheet = 64U << 20U; ///< bytes; far above any sheet made by hand
constexpr std::size_t most_rows = 200'000;        ///< rows with something in them

/// Reads a sheet from its bytes, which tell whether it is text or a workbook (.xlsx, .ods). Of a workbook the first
/// sheet with a column `gtin` is read; where none has one, the one with most of our columns. `source` is the file as
/// the user named it; faults of a workbook with several sheets name the sheet behind it.
/// Faults: BadEncoding (neither text nor such a workbook), TooLarge, TornFile, Empty, those of the header
/// (sheet_header.h), BadRow, DoubledValue (a number that stands in an earlier row), and for cells BadValue,
/// MissingValue and those of gtin_cell.h.
[[nodiscard]] Sheet read_sheet(std::string_view bytes, const std::string& source);

/// The same from a file. Further faults: NoSuchFile, IsFolder, CannotRead.
[[nodiscard]] Sheet read_sheet_file(const std::string& path);

} // namespace catalog
