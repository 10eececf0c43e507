// Which columns of a release's files are read, found by their names: their order changed from year to year, and new
// ones come every few years. Source: headers of the downloads of April 2019, October 2023 and April 2026.
#pragma once

#include "core/error.h"

#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace catalog {

/// A column that is read.
struct ReleaseColumn {
    std::string_view name;
    bool needed; ///< a file without it cannot be read; the others came or went with the years
};

/// The columns of food.csv: number, kind, name, day.
[[nodiscard]] std::span<const ReleaseColumn> food_columns();
/// The columns of branded_food.csv, those of ReleaseText first that stand there.
[[nodiscard]] std::span<const ReleaseColumn> branded_columns();
/// The columns of food_nutrient.csv.
[[nodiscard]] std::span<const ReleaseColumn> amount_columns();

/// Where the wanted columns stand in a file.
struct ColumnPlaces {
    std::vector<std::size_t> wanted;   ///< their places in the header, ascending
    std::vector<std::size_t> field_of; ///< for each column of the table: which wanted field it is; absent: none
    static constexpr std::size_t absent = static_cast<std::size_t>(-1);
};

/// Finds the columns in a header. Errors: MissingColumn, with all that are missing in `place.expected`.
[[nodiscard]] core::Result<ColumnPlaces>
find_columns(std::span<const ReleaseColumn> columns, const std::vector<std::string>& header, const std::string& source);

} // namespace catalog
