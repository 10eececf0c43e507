// Text in columns for the terminal: each as wide as its widest cell, counted in letters, not in bytes.
#pragma once

#include <iosfwd>
#include <string>
#include <string_view>
#include <vector>

namespace kiosk {

/// The number of characters of a UTF-8 text (code points: our texts hold no combining ones).
[[nodiscard]] std::size_t letters_in(std::string_view utf8);

/// Collects rows, then prints them aligned; the first and the last column to the left, the others to the right.
class Columns {
public:
    void row(std::vector<std::string> cells);
    /// A line that takes no part in the columns.
    void line(std::string words);
    void print(std::ostream& out) const;

private:
    struct Line {
        std::vector<std::string> cells; ///< one cell and `whole`: a line of its own
        bool whole = false;
    };
    std::vector<Line> lines_;
};

} // namespace kiosk
