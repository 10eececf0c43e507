// The rows of a CSV file, as LibreOffice and Excel write them. The library that takes them apart shows only in csv.cpp.
// Source: RFC 4180, and what spreadsheet programs do beyond it (other separators, line breaks in quotes, "sep=").
#pragma once

#include <cstddef>
#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace catalog {

/// What a workbook knows of a cell beyond its text.
enum class CellMark {
    Day,    ///< the program took what was typed for a day
    Broken, ///< a formula that gives no value
};

/// One row, numbered as a spreadsheet shows it: rows without a cell count, line breaks in quotes do not.
struct CsvRow {
    std::size_t number = 0;                     ///< from 1
    std::vector<std::string> cells;             ///< at most most_cells; none for an empty line
    std::size_t cell_count = 0;                 ///< how many cells stood there, kept or not
    std::map<std::size_t, CellMark> marks = {}; ///< by place, of workbooks only
    bool bad_quote = false; ///< a quote is never closed, or stands where none may: no cells can be told
};

/// No sheet of ours comes near this many cells in a row.
constexpr std::size_t most_cells = 500;

/// Takes off a first line such as "sep=;", which tells the separator and is no row. Nothing (0) without one.
[[nodiscard]] char take_separator_line(std::string_view& text);

/// Calls `take` for every row in order. `text` has "\n" as its line ends. Quotes are taken off, blanks around cells
/// too. Behind a row with a bad quote reading goes on with the next line, so that one slip does not hide the rest.
void for_each_row(std::string_view text, char separator, const std::function<void(const CsvRow&)>& take);

/// The first row that has a cell, read with this separator.
[[nodiscard]] CsvRow first_row(std::string_view text, char separator);

} // namespace catalog
