// Puts a catalog, its tour and its texts into one sealed file, for a stick that carries it to stations.
#pragma once

#include "catalog/bundle/keys.h"
#include "catalog/bundle/manifest.h"
#include "catalog/file/safe_write.h"
#include "core/error.h"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>

namespace catalog {

/// What a leader wants sealed.
struct SealOrder {
    std::filesystem::path catalog;
    std::filesystem::path tour;           ///< a tour as a sheet; empty: none
    std::filesystem::path texts;          ///< a folder of the leader's texts; empty: none
    std::filesystem::path key;            ///< the secret file or its folder
    std::string name;                     ///< of the bundle, as stations show it
    std::string maker;                    ///< who seals it, as stations show it
    std::string made;                     ///< when, in words
    std::optional<std::uint64_t> counter; ///< its age; counted up from the last one when left out
    std::filesystem::path out;            ///< the bundle; an older one is replaced
};

/// What was sealed.
struct Sealed {
    Manifest manifest;
    PublicKey key{};
    std::uint64_t bytes = 0;  ///< of the whole bundle
    std::uint64_t stayed = 0; ///< labels for this place only, which never leave it
};

/// Seals. The catalog goes in as a copy without labels for this place only and without what was deleted from it; the
/// copy lies beside the bundle while it is made, so that there must be room for twice its size. The bundle replaces an
/// older one whole or not at all. Errors: BadValue (words of the order), NoKey and those of opening a catalog, Empty
/// (no product may leave), Busy, CannotRead, CannotWrite.
[[nodiscard]] core::Result<Sealed> seal(const SealOrder& order, Disk& disk = real_disk());

} // namespace catalog
