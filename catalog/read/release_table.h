// One CSV file of a release, read by the names of its columns.
#pragma once

#include "catalog/read/published_csv.h"
#include "catalog/read/recover.h"
#include "catalog/read/release_columns.h"

#include <cstdint>
#include <optional>

namespace catalog {

/// Rows of a file, a field for each column of its table.
class ReleaseTable {
public:
    /// Reads the header. Errors: those of PublishedCsv::header and find_columns.
    [[nodiscard]] static core::Result<ReleaseTable> open(ByteStream& bytes, const std::string& source,
                                                         std::span<const ReleaseColumn> columns);

    /// See PublishedCsv::next.
    [[nodiscard]] core::Result<bool> next() { return csv_.next(); }

    /// The field of the nth column of the table; empty where the file has no such column.
    [[nodiscard]] std::string_view at(std::size_t column) const
    {
        const auto field = field_of_[column];
        return field == ColumnPlaces::absent ? std::string_view{} : csv_.field(field);
    }

    [[nodiscard]] std::uint64_t bytes_read() const { return csv_.bytes_read(); }
    [[nodiscard]] bool complete() const { return csv_.complete(); }

private:
    ReleaseTable(PublishedCsv csv, std::vector<std::size_t> field_of)
        : csv_(std::move(csv)), field_of_(std::move(field_of))
    {
    }
    PublishedCsv csv_;
    std::vector<std::size_t> field_of_;
};

/// A whole number below 2^32; nothing for anything else.
[[nodiscard]] std::optional<std::uint32_t> read_whole(std::string_view text);

/// An amount such as "357.0", "28.350000381469727" or "0E-8", cut to nine digits; nothing for anything else, and for
/// negative ones.
[[nodiscard]] std::optional<ReleaseAmount> read_amount(std::string_view text);

/// "2023-10-26" or "10/26/2023" as 20231026; 0 for anything else.
[[nodiscard]] std::uint32_t read_day(std::string_view text);

} // namespace catalog
