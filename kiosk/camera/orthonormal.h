// Rows of numbers at right angles to one another: what of some values is made of them, and what is left.
#pragma once

#include <span>
#include <vector>

namespace kiosk {

/// Takes rows one by one, all as long as the first, and keeps of each what those before it do not have.
class Orthonormal {
public:
    /// A row that has nothing new adds nothing.
    void add(std::vector<double> row);
    /// The part of the values that the rows make up.
    [[nodiscard]] std::vector<double> part_of(std::span<const double> values) const;
    /// The squares of what the rows leave of the values, added up.
    [[nodiscard]] double left_of(std::span<const double> values) const;

private:
    std::vector<std::vector<double>> rows_; ///< each of length 1
};

} // namespace kiosk
