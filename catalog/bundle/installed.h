// The bundles of one station: which one is in place, which was before it, and whose bundles are taken.
// They lie in the folder "bundles" of the station's data folder, each in a folder of its own; one small file says which
// counts, so that one rename changes all. docs/bundle.md describes it.
#pragma once

#include "catalog/bundle/keys.h"
#include "catalog/bundle/manifest.h"
#include "core/error.h"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

namespace catalog {

/// A bundle that was installed.
struct InstalledBundle {
    std::string folder; ///< in "bundles": "b12"
    Digest manifest{};  ///< of the manifest's text, which names every byte of it
    bool operator==(const InstalledBundle&) const = default;
};

/// What a station has of bundles.
struct Installed {
    std::optional<PublicKey> key;          ///< the accepted one; nothing before the first
    std::uint64_t newest = 0;              ///< the largest counter that ever was in place
    std::optional<InstalledBundle> now;    ///< nothing: the place's own catalog is served
    std::optional<InstalledBundle> before; ///< where going back leads; nothing: to the place's own catalog
    bool can_go_back = false;              ///< whether there is anything to go back to
    bool operator==(const Installed&) const = default;
};

/// Where a station's bundles lie: "bundles" in its data folder.
[[nodiscard]] std::filesystem::path bundles_folder(const std::filesystem::path& data);

/// The file that says which bundle is in place.
[[nodiscard]] std::filesystem::path installed_file(const std::filesystem::path& data);

/// Reads it; a station without one has nothing installed. Errors: DamagedRecord, CannotRead.
[[nodiscard]] core::Result<Installed> read_installed(const std::filesystem::path& data);

/// What the text of that file says; nothing when it is not as installed_text writes it.
[[nodiscard]] std::optional<Installed> installed_in(std::string_view text);

/// The text of that file.
[[nodiscard]] std::string installed_text(const Installed& installed);

/// The catalog of an installed bundle.
[[nodiscard]] std::filesystem::path catalog_of(const std::filesystem::path& data, const InstalledBundle& bundle);

/// The manifest of an installed bundle; nothing when it cannot be read any more.
[[nodiscard]] std::optional<Manifest> manifest_of(const std::filesystem::path& data, const InstalledBundle& bundle);

/// The place's own catalog, which no bundle ever touches.
[[nodiscard]] std::filesystem::path own_catalog(const std::filesystem::path& data);

} // namespace catalog
