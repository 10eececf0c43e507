// A catalog as sheets again: every product on a row that loads back as the same product, in bounded memory.
#pragma once

#include "catalog/file/safe_write.h"
#include "catalog/read/faults.h"
#include "catalog/store/store.h"
#include "core/error.h"

#include <cstddef>
#include <filesystem>
#include <string>
#include <vector>

namespace catalog {

/// What goes into the sheets.
struct ExportOptions {
    bool typed_here_only = false;        ///< only what was typed at a station
    std::size_t most_rows = 200'000;     ///< rows of one sheet: as many as a load takes
    std::size_t most_bytes = 60U << 20U; ///< bytes of one sheet: a little fewer than a load takes
};

/// What came of an export.
struct ExportReport {
    std::size_t written = 0;        ///< products on rows
    std::vector<std::string> files; ///< the sheets, in order
    Faults not_carried;             ///< products that no sheet can say; they are on no row
};

/// Writes all products of a catalog, in the order of their numbers, into a sheet (CSV in UTF-8 with its mark) at `out`;
/// what one load does not take goes into further sheets beside it: "sheet-2.csv" behind "sheet.csv". Each sheet is
/// written aside and put in the place of an older one. The columns are those that any of the products uses. Without a
/// product there is a sheet with a header alone. Errors: IsFolder, Busy, CannotWrite.
/// Throws std::runtime_error when the catalog breaks under it.
[[nodiscard]] core::Result<ExportReport> export_sheets(const Store& store, const std::filesystem::path& out,
                                                       const ExportOptions& options = {}, Disk& disk = real_disk());

/// Writes an empty sheet with the columns that a leader fills in, a row of notes on each, and a row that shows how;
/// both begin with "#", so that a load passes them over. Errors: IsFolder, Busy, CannotWrite.
[[nodiscard]] core::Result<void> write_template(const std::filesystem::path& out, Disk& disk = real_disk());

} // namespace catalog
