// The rows of a published CSV file, one after the other, in a piece of memory that does not grow with the file (RFC
// 4180). A large file is taken apart ahead of the rows that are given, on a thread of its own.
#pragma once

#include "catalog/read/csv_pieces.h"

#include <cstddef>
#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace catalog {

/// Reads a file row by row.
class PublishedCsv {
public:
    static constexpr std::size_t longest_row = CsvPieces::longest_row; ///< bytes; thirty times the longest seen

    /// `source` is the file as the user named it, for errors. From the second `next` on a thread may read `bytes`.
    PublishedCsv(ByteStream& bytes, std::string source);
    PublishedCsv(PublishedCsv&&) noexcept;
    PublishedCsv& operator=(PublishedCsv&&) = delete;
    ~PublishedCsv();

    /// Reads the header. Errors: Empty, TooLarge, CannotRead, TornFile.
    [[nodiscard]] core::Result<std::vector<std::string>> header();

    /// Which fields `field` is to give, by their place in the header, in ascending order; others are passed over. Asked
    /// once, behind `header`.
    void want(const std::vector<std::size_t>& places);

    /// Goes on to the next row; false at the end. A row with fewer fields has empty ones. Errors: TooLarge (a row
    /// without end), CannotRead, TornFile.
    [[nodiscard]] core::Result<bool> next();

    /// The nth wanted field of the row, quotes taken off. Lives until the next call of `next`.
    [[nodiscard]] std::string_view field(std::size_t wanted) const;

    /// The number of the row in the file, 1 for the header; a line break in quotes does not count.
    [[nodiscard]] std::size_t row() const;

    /// Whether the row had as many fields as the header.
    [[nodiscard]] bool complete() const;

    /// How many bytes of the file were read, up to the row and some behind it.
    [[nodiscard]] std::uint64_t bytes_read() const;

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace catalog
