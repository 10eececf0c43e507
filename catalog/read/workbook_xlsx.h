// Workbooks of Office Open XML (.xlsx, .xlsm). Source: ECMA-376 part 1, chapter 18 (SpreadsheetML): 18.2 (workbook),
// 18.3 (worksheets), 18.4 (shared strings), 18.8 (styles); part 2, section 6.5 (relationships).
#pragma once

#include "catalog/read/workbook.h"

namespace catalog {

/// Opens a zip file that has a "_rels/.rels". Errors as Workbook::open.
[[nodiscard]] core::Result<std::unique_ptr<Workbook>> open_xlsx(ZipFile zip, const std::string& source);

} // namespace catalog
