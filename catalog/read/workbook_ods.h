// OpenDocument spreadsheets. Source: OASIS, OpenDocument 1.3, part 3: section 9.1 (tables), 6.1 (white space), 19.385
// and following (values of cells).
#pragma once

#include "catalog/read/workbook.h"

namespace catalog {

/// Opens a zip file that has a "content.xml". Errors as Workbook::open.
[[nodiscard]] core::Result<std::unique_ptr<Workbook>> open_ods(ZipFile zip, const std::string& source);

} // namespace catalog
