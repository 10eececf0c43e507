// Workbooks for tests: the XML of their parts, packed as the spreadsheet programs pack it.
// Sources: ECMA-376 part 1, chapter 18; OASIS, OpenDocument 1.3, part 3.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace test {

/// The rows of a sheet of cells that all hold text.
using TextRows = std::vector<std::vector<std::string>>;

/// One sheet of a workbook: its name, and what stands between <sheetData> and </sheetData>, or in its table.
struct Tab {
    std::string name;
    std::string rows;
};

/// An .xlsx file. `shared`: its shared strings, as <si>...</si>. Styles: 0 plain, 1 "0%" (built-in 9), 2 a day
/// (built-in 14), 3 "0.0%", 4 "yyyy\-mm\-dd;@", 5 twelve zeros, 6 "General", 7 "h:mm" (built-in 20).
[[nodiscard]] std::string xlsx_of(const std::vector<Tab>& tabs, std::string_view shared = "", bool since_1904 = false);

/// An .ods file; the names of its XML are as the programs write them ("table:table-row").
[[nodiscard]] std::string ods_of(const std::vector<Tab>& tabs);

/// The <row>s of inline texts, for xlsx_of. Empty texts have no cell.
[[nodiscard]] std::string xlsx_rows(const TextRows& rows);

/// The <table:table-row>s of texts, for ods_of.
[[nodiscard]] std::string ods_rows(const TextRows& rows);

} // namespace test
