// Reads the published facts in tests/data/reference; a table without rows or columns throws, so no test passes on
// nothing.
#pragma once

#include <cstddef>
#include <map>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace test {

/// One row of a table; its cells are read by the name of their column.
class ReferenceRow {
public:
    using Columns = std::map<std::string, std::size_t, std::less<>>;

    ReferenceRow(std::shared_ptr<const Columns> columns, std::vector<std::string> cells, std::string place);

    /// The cell of that column. Throws std::runtime_error where the table has no such column.
    [[nodiscard]] const std::string& operator[](std::string_view column) const;

    /// "gtin.csv row 12 (source: GS1 General Specifications)": for CAPTURE.
    [[nodiscard]] std::string place() const;

private:
    std::shared_ptr<const Columns> columns_;
    std::vector<std::string> cells_;
    std::string place_;
};

/// The rows of a CSV text by RFC 4180 (LF or CRLF). Throws std::runtime_error, with `name` and the row, where there is
/// no row behind the header, a row has more or fewer cells than the header, a column stands twice or a quote is wrong.
[[nodiscard]] std::vector<ReferenceRow> parse_reference(std::string_view csv, const std::string& name);

/// The rows of a file in tests/data/reference, such as "gtin.csv". Throws as parse_reference does, and where the file
/// is missing or a row names no source.
[[nodiscard]] std::vector<ReferenceRow> reference_rows(const std::string& name);

/// Those rows of them whose `column` holds `value`; throws where there is none.
[[nodiscard]] std::vector<ReferenceRow> reference_rows(const std::string& name, std::string_view column,
                                                       std::string_view value);

} // namespace test
