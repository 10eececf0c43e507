// One load of a release: three passes over its files in bounded memory, and then a new catalog in the old one's place.
#pragma once

#include "catalog/file/safe_write.h"
#include "catalog/load/release_options.h"
#include "catalog/load/release_report.h"
#include "core/error.h"

#include <filesystem>

namespace catalog {

/// What is asked of loading a release.
struct ReleaseLoad {
    ReleaseChoice choice;
    TellProgress tell;        ///< may be empty
    bool keep_former = false; ///< so that the load can be undone (catalog/load/undo.h)
};

/// What came of it.
struct ReleaseLoaded {
    ReleaseReport report;
    bool cancelled = false; ///< nothing was changed
};

/// Reads the release at `source` into the catalog at `into`, which is made when it is not there. Of several records of
/// a product the newest is taken. An entry of the leader's own stays over the release's. Whoever has the old catalog
/// open goes on reading it; a load that breaks off changes nothing, and the next one of the same files and choice goes
/// on where it was: what it had set aside lies in "CATALOG.loading" until then. Errors: those of find_release,
/// ReleaseTable and Store::open, Busy, CannotWrite.
[[nodiscard]] core::Result<ReleaseLoaded> load_release(const std::filesystem::path& source,
                                                       const std::filesystem::path& into, const ReleaseLoad& asked = {},
                                                       Disk& disk = real_disk());

} // namespace catalog
