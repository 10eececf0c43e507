// What is in a file, before anything is changed by it.
#pragma once

#include "catalog/bundle/manifest.h"
#include "catalog/read/sheet.h"
#include "core/error.h"
#include "kiosk/desk/stick_files.h"

#include <cstdint>
#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace kiosk {

/// A sheet: read whole, since a load reads it whole too.
struct SheetPreview {
    static constexpr std::size_t most_shown = 8;
    std::size_t good_rows = 0;
    std::size_t refused_rows = 0;
    std::vector<core::Product> first; ///< the first good rows
    catalog::Faults faults;
    std::string tab; ///< of a workbook: the sheet that was read
};

/// A release: its files, and what its beginning tells.
struct ReleasePreview {
    enum class Form { Folder, Zip, Json };
    /// Whose columns branded_food.csv has (docs/release.md): each layout brought one that the one before had not.
    enum class Columns { Of2019, From2020, From2022, From2026 };
    Form form = Form::Folder;
    std::uint64_t bytes = 0;
    std::optional<Columns> columns;       ///< of CSV files
    std::optional<std::uint64_t> records; ///< about; nothing where the beginning does not tell
    bool counted = false;                 ///< the file was so short that `records` is exact
    std::string day;                      ///< of the download, as its name says: "2026-04-30"; empty: it does not
};

/// A bundle: its seal was checked, its parts were not read.
struct BundlePreview {
    enum class Key { Accepted, First, Foreign }; ///< First: no key was accepted here yet
    enum class Age { Newer, InPlace, Before, Older };
    catalog::Manifest manifest;
    std::string fingerprint;
    std::string accepted; ///< the fingerprint of the key that this station takes; empty: none yet
    Key key = Key::First;
    Age age = Age::Newer;
    std::uint64_t newest = 0; ///< the largest number that was in place here
};

using Preview = std::variant<SheetPreview, ReleasePreview, BundlePreview>;

/// Looks into a file. `data` is the station's data folder. Errors: those of reading it.
[[nodiscard]] core::Result<Preview> look_into(const StickFile& file, const std::filesystem::path& data);

} // namespace kiosk
