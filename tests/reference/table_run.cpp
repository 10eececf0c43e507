#include "tests/reference/table_run.h"

#include <doctest/doctest.h>

#include <iostream>

namespace test {

void TableRun::done(std::size_t rows) const
{
    std::size_t left_out = 0;
    std::string reasons;
    for (const auto& [reason, count] : skipped_) {
        CHECK_FALSE(reason.empty());
        left_out += count;
        reasons += (reasons.empty() ? " (" : ", ") + reason + ": " + std::to_string(count);
    }
    std::cout << table_ << ": " << used_ << " rows used, " << left_out << " skipped" << reasons
              << (reasons.empty() ? "" : ")") << ", " << settled_ << " settled\n";
    CAPTURE(table_);
    CHECK(used_ > 0);
    CHECK(used_ + settled_ + left_out == rows);
}

} // namespace test
