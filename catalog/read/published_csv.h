// The rows of a published CSV file, one after the other, in a piece of memory that does not grow with the file: every
// field in quotes or none, a quote inside doubled, rows ended by LF or CR LF (RFC 4180).
// Our own and no library's: a release has thirty million rows, and reading it is most of a load. Checked in its test
// against the library that reads sheets.
#pragma once

#include "catalog/read/byte_stream.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace catalog {

/// Reads a file row by row.
class PublishedCsv {
public:
    static constexpr std::size_t longest_row = 4U << 20U; ///< bytes; thirty times the longest seen

    /// `source` is the file as the user named it, for errors.
    PublishedCsv(ByteStream& bytes, std::string source);

    /// Reads the header. Errors: Empty, TooLarge, CannotRead.
    [[nodiscard]] core::Result<std::vector<std::string>> header();

    /// Which fields `field` is to give, by their place in the header, in ascending order; others are passed over.
    void want(std::vector<std::size_t> places);

    /// Goes on to the next row; false at the end. A row with fewer fields has empty ones. Errors: TooLarge (a row
    /// without end), CannotRead.
    [[nodiscard]] core::Result<bool> next();

    /// The nth wanted field of the row, quotes taken off. Lives until the next call of `next`.
    [[nodiscard]] std::string_view field(std::size_t wanted) const { return fields_[wanted]; }

    /// The number of the row in the file, 1 for the header; a line break in quotes does not count.
    [[nodiscard]] std::size_t row() const { return row_; }

    /// Whether the row had as many fields as the header.
    [[nodiscard]] bool complete() const { return fields_seen_ == columns_; }

    /// How many bytes of the file are behind.
    [[nodiscard]] std::uint64_t bytes_read() const { return taken_ + at_; }

private:
    enum class Found { Row, End, More };
    [[nodiscard]] core::Result<bool> fill();
    [[nodiscard]] Found parse();
    [[nodiscard]] Found quoted(std::size_t& at, std::string_view& field);
    void take(std::size_t& next_wanted, std::string_view field);

    ByteStream* bytes_;
    std::string source_;
    std::vector<char> buffer_;
    std::size_t at_ = 0;  ///< where the next row starts
    std::size_t end_ = 0; ///< of what was read
    std::uint64_t taken_ = 0;
    bool at_end_ = false;
    std::vector<std::size_t> wanted_;
    std::vector<std::string_view> fields_;
    std::vector<std::string> unquoted_; ///< fields with a doubled quote, written without it
    std::size_t unquoted_used_ = 0;
    std::size_t columns_ = 0;
    std::size_t fields_seen_ = 0;
    std::size_t row_ = 0;
};

} // namespace catalog
