// A sheet of one product, made cell by cell, and what its reading told.
#pragma once

#include "catalog/read/sheet.h"

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace test {

/// A sheet of one product: the four columns that must be there and a serving, then others; a later value of the same
/// column stands in place of the earlier one.
class OneRow {
public:
    /// Puts a cell into a column.
    OneRow& with(const std::string& column, const std::string& cell)
    {
        for (auto& [name, value] : cells_)
            if (name == column) {
                value = cell;
                return *this;
            }
        cells_.emplace_back(column, cell);
        return *this;
    }

    /// The sheet as the reader takes it.
    [[nodiscard]] catalog::Sheet read(char separator = ',') const
    {
        std::string header;
        std::string row;
        for (const auto& [name, value] : cells_) {
            header += (header.empty() ? "" : std::string(1, separator)) + name;
            row += (&value == &cells_.front().second ? "" : std::string(1, separator)) + "\"" + value + "\"";
        }
        return catalog::read_sheet(header + "\n" + row + "\n", "some/folder/cereals.csv");
    }

private:
    std::vector<std::pair<std::string, std::string>> cells_ = {{"gtin", "9521234543213"},
                                                               {"name", "Oat rounds"},
                                                               {"entered_on", "2026-03-02"},
                                                               {"serving_size", "39 g"},
                                                               {"calories", "140"}};
};

/// "2 sodium_mg 4" (row, column, kind) for every fault.
[[nodiscard]] inline std::vector<std::string> told(const catalog::Sheet& sheet)
{
    std::vector<std::string> all;
    for (const auto& error : sheet.faults.kept())
        all.push_back(std::to_string(error.place.row) + " " + error.place.column + " " +
                      std::to_string(static_cast<int>(error.kind)));
    return all;
}

/// One such text.
[[nodiscard]] inline std::string tell(std::size_t row, const char* column, core::Error::Kind kind)
{
    return std::to_string(row) + " " + column + " " + std::to_string(static_cast<int>(kind));
}

} // namespace test
