// Workbooks (.xlsx, .ods) to the rows that a CSV file would give, in bounded memory.
// Sources: ECMA-376, Office Open XML, part 1 (SpreadsheetML) and part 2 (packages); OASIS, OpenDocument 1.3, part 3.
#pragma once

#include "catalog/read/csv.h"
#include "catalog/read/zip.h"
#include "core/error.h"

#include <cstddef>
#include <functional>
#include <memory>
#include <string>
#include <vector>

namespace catalog {

/// Takes a row; false ends the reading.
using TakeRow = std::function<bool(const CsvRow&)>;

/// What is told of a sheet of a workbook before it is read.
struct WorkbookSheet {
    std::string name; ///< as its tab shows it
    CsvRow first;     ///< the first row with anything in it; number 0 when there is none
};

/// An open workbook. Rows come in order; those without anything are left out. Cells behind the last filled one are not
/// there. A number is written as the spreadsheet shows it, except that no place behind the point is dropped or filled
/// up; a day as "2026-11-25"; of merged cells only the first holds anything; a formula stands for its saved value.
class Workbook {
public:
    /// Finds out which kind of workbook a zip file is. `source` is the file as the user named it.
    /// Errors: BadEncoding (a zip file that is no such workbook, or a locked one), TooLarge, TornFile, CannotRead.
    [[nodiscard]] static core::Result<std::unique_ptr<Workbook>> open(ZipFile zip, const std::string& source);

    Workbook() = default;
    Workbook(const Workbook&) = delete;
    Workbook& operator=(const Workbook&) = delete;
    virtual ~Workbook() = default;

    /// The sheets in the order of their tabs, at most most_tabs of them. Errors as above.
    [[nodiscard]] virtual core::Result<std::vector<WorkbookSheet>> sheets() = 0;

    /// Reads one of them, by its place in `sheets`. Errors as above.
    [[nodiscard]] virtual core::Result<void> for_each_row(std::size_t sheet, const TakeRow& take) = 0;

    static constexpr std::size_t most_tabs = 100; ///< sheets behind these are not looked at
};

/// What a workbook may unpack to. The sheet itself streams; this bounds the time that it takes.
[[nodiscard]] ZipLimits workbook_limits();

/// The most bytes of a cell that are kept; a spreadsheet takes 32,767 letters.
constexpr std::size_t longest_cell = 256U << 10U;

/// The most rows and columns of a spreadsheet. Source: ECMA-376 leaves it open; common practice of the programs.
constexpr std::size_t last_row = 1U << 20U;
constexpr std::size_t last_column = 1U << 14U;

} // namespace catalog
