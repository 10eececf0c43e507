// One load: sheets are read, and either all of them reach the catalog or none does.
#pragma once

#include "catalog/file/safe_write.h"
#include "catalog/load/merge.h"
#include "catalog/read/faults.h"
#include "core/error.h"

#include <cstddef>
#include <filesystem>
#include <functional>
#include <string>
#include <vector>

namespace catalog {

/// What the user asks of a load.
struct LoadOptions {
    bool keep_good_rows = false;      ///< take the rows without a fault although others have one
    bool keep_former = false;         ///< so that the load can be undone (catalog/load/undo.h)
    std::function<bool()> go_on = {}; ///< asked between the steps; false ends the load. May be empty
};

/// Which sheet of a workbook was read.
struct ReadTab {
    std::string source;              ///< the workbook, as the user named it
    std::string name;                ///< as its tab shows it
    std::vector<std::string> others; ///< of sheets that have our columns too and were not read
};

/// What came of a load.
struct LoadReport {
    std::size_t taken = 0;        ///< products now in the catalog because of this load, the replaced ones included
    std::size_t replaced = 0;     ///< of these, how many stand in place of an older entry with the same number
    std::size_t refused_rows = 0; ///< rows that were not taken; all rows when nothing was loaded
    std::size_t differing = 0;    ///< of the replaced ones, how many said something else before
    std::vector<EntryDifference> differences; ///< of the first few: what stood there, and what stands now
    Faults faults;                            ///< of all sources, each with its place
    std::vector<ReadTab> tabs;                ///< of sources that are workbooks
    bool cancelled = false;                   ///< nothing was changed
};

/// Reads every sheet and puts its products into the catalog at `into`, which is made when it is not there. Products
/// that no sheet names stay; one with the same number is replaced. With any fault nothing is loaded (`taken` is 0 and
/// the file untouched), unless the good rows are asked for; a sheet whose header has a fault has no good rows. The
/// catalog is written beside the old one, synced and put in its place: whoever has the old one open goes on reading it,
/// and a broken off load changes nothing. A missing folder is made. Errors: IsFolder, NoCatalog, NewerCatalog,
/// TornCatalog and CannotRead of what lies at `into`, Busy (another writer at work), CannotWrite (disk, permission);
/// all else is in the report.
[[nodiscard]] core::Result<LoadReport> load(const std::vector<std::string>& sources, const std::filesystem::path& into,
                                            LoadOptions options = {}, Disk& disk = real_disk());

} // namespace catalog
