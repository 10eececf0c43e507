// Puts a bundle on a station: all of it is verified before anything changes, and the last good one is kept.
#pragma once

#include "catalog/bundle/installed.h"
#include "catalog/bundle/keys.h"
#include "catalog/bundle/manifest.h"
#include "catalog/file/byte_stream.h"
#include "catalog/file/safe_write.h"
#include "core/error.h"

#include <cstddef>
#include <filesystem>
#include <optional>
#include <string>

namespace catalog {

/// What somebody wants installed.
struct InstallOrder {
    std::filesystem::path bundle;
    std::filesystem::path data; ///< the station's data folder; made when it is not there
    std::string accept;         ///< the fingerprint that was compared, for the first key; empty: none
};

/// What came of it.
struct Installing {
    Manifest manifest;
    PublicKey key{};
    std::size_t came_along = 0; ///< labels for this place only, of the place's own catalog
};

/// Verifies the bundle in one pass, writing it aside, and then puts it in place of the one before by one rename. When
/// this returns an error, or is broken off at any moment, the station has what it had.
/// Errors: those of read_seal, read_manifest and read_parts; UnknownKey, OtherKey, ForeignKey, OlderBundle, NoRoom,
/// DamagedRecord, Busy, CannotWrite, and those of opening the catalog in it.
[[nodiscard]] core::Result<Installing> install(const InstallOrder& order, Disk& disk = real_disk());

/// The same for a bundle that is open already; `order.bundle` names it.
[[nodiscard]] core::Result<Installing> install(ByteStream& source, const InstallOrder& order, Disk& disk = real_disk());

/// Puts the last good bundle, or the place's own catalog where there was none, in place again; what was in place
/// becomes the one before, so that a second time undoes the first. Returns what is in place now; nothing for the
/// place's own catalog. Errors: NothingBefore, DamagedRecord, Busy, CannotWrite, and those of opening its catalog.
[[nodiscard]] core::Result<std::optional<Manifest>> go_back(const std::filesystem::path& data,
                                                            Disk& disk = real_disk());

/// Forgets whose bundles this station takes, so that another first key can be accepted; what is in place stays.
/// Errors: DamagedRecord, Busy, CannotWrite.
[[nodiscard]] core::Result<void> forget_key(const std::filesystem::path& data, Disk& disk = real_disk());

} // namespace catalog
