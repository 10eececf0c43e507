// Counts what became of the rows of one reference table and prints it: none may be left out without a named reason.
#pragma once

#include <cstddef>
#include <map>
#include <string>

namespace test {

/// One run through a table.
class TableRun {
public:
    explicit TableRun(std::string table) : table_(std::move(table)) {}

    void used() { ++used_; }
    /// A row that is not run, and why.
    void skipped(const std::string& reason) { ++skipped_[reason]; }
    /// A row on which table and code disagreed, run as its citation settles it.
    void settled() { ++settled_; }

    /// Prints "unit_price.csv: 67 rows used, 0 skipped, 0 settled" and fails where the rows do not add up to `rows`,
    /// where none was used or where a reason is empty.
    void done(std::size_t rows) const;

private:
    std::string table_;
    std::size_t used_ = 0;
    std::size_t settled_ = 0;
    std::map<std::string, std::size_t> skipped_;
};

} // namespace test
