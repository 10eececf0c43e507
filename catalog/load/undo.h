// Takes the last load back: the catalog that it replaced was kept beside the new one, under a second name, so that
// nothing is copied and one whole catalog lies in place at any moment.
#pragma once

#include "catalog/file/safe_write.h"
#include "core/error.h"

#include <filesystem>

namespace catalog {

/// Says what becomes of the catalog at `into` when `writing` replaces it: kept (where there is none, an empty one), or
/// not, and then neither is what an earlier load kept. Throws std::runtime_error when the disk refuses.
void keep_former(SafeWrite& writing, const std::filesystem::path& into, bool keep);

/// Whether another catalog was kept when the one at `catalog` was put in place.
[[nodiscard]] bool can_undo(const std::filesystem::path& catalog);

/// Whether the one in place is the older of the two: the last load was undone. By the files' times, so a clock that was
/// set back makes this wrong, and nothing but the name of a button hangs on it.
[[nodiscard]] bool is_load_undone(const std::filesystem::path& catalog);

/// Puts it in place again; the one that gives way is kept, so that a second time undoes the first.
/// Errors: NothingBefore, those of opening the kept one, Busy, CannotWrite.
[[nodiscard]] core::Result<void> undo_load(const std::filesystem::path& catalog, Disk& disk = real_disk());

} // namespace catalog
