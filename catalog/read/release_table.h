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

    /// Calls `take` with the number of every row (2 is the first behind the header); it refuses the file with an error.
    /// Every `between` rows `go_on` is asked with the bytes read; false ends the reading, and the answer is false.
    /// Errors: those of PublishedCsv::next, and of `take`.
    template<class GoOn, class Take>
    [[nodiscard]] core::Result<bool> each(std::size_t between, const GoOn& go_on, Take take)
    {
        for (std::size_t row = 2;; ++row) {
            const auto found = next();
            if (!found)
                return found;
            if (!*found)
                return true;
            if (row % between == 0 && !go_on(csv_.bytes_read()))
                return false;
            if (const core::Result<void> taken = take(row); !taken)
                return tl::make_unexpected(taken.error());
        }
    }

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
