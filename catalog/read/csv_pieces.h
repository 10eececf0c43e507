// A published CSV file taken apart into pieces of whole rows (RFC 4180). The library that does it shows only in
// csv_pieces.cpp.
#pragma once

#include "catalog/file/byte_stream.h"

#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace catalog {

/// Rows of a file, one behind the other.
struct CsvPiece {
    /// Where a field lies in the letters.
    struct Field {
        std::size_t at = 0;
        std::size_t size = 0;
    };
    std::string letters;
    std::vector<Field> fields;        ///< as many as are wanted for each row
    std::vector<std::size_t> columns; ///< how many columns each row has
    std::uint64_t bytes_read = 0;     ///< of the file, up to here

    /// Keeps of every row only the fields at these places of `count`; those beyond are empty.
    void keep(const std::vector<std::size_t>& places, std::size_t count);
};

/// Reads pieces from first to last. For one thread at a time.
class CsvPieces {
public:
    static constexpr std::size_t longest_row = 4U << 20U; ///< bytes
    static constexpr std::size_t every_field = 500;       ///< so many are given until `want` is asked

    /// `source` is the file as the user named it, for errors.
    CsvPieces(ByteStream& bytes, std::string source);
    CsvPieces(const CsvPieces&) = delete;
    CsvPieces& operator=(const CsvPieces&) = delete;
    ~CsvPieces();

    /// Which fields the next pieces are to give, by their place in a header of so many columns, in ascending order.
    /// Asked once.
    void want(const std::vector<std::size_t>& places, std::size_t header_columns);

    /// The next piece, of one row or more; nothing at the end. Errors: TooLarge (a row without end), CannotRead,
    /// TornFile. Throws std::bad_alloc.
    [[nodiscard]] core::Result<std::optional<CsvPiece>> next();

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

} // namespace catalog
