// All that is wrong with outside data, in the order in which it was found; counted in full, kept up to a limit.
#pragma once

#include "core/error.h"

#include <cstddef>
#include <vector>

namespace catalog {

/// A list of errors that a hostile file cannot make endless.
class Faults {
public:
    static constexpr std::size_t most_kept = 1000; ///< nobody reads more, and each may hold a cell

    /// Counts an error and keeps it while there is room. Cells in its place are cut to a readable length.
    void add(core::Error error);

    /// Counts all of `later` and keeps of it what has room.
    void add(const Faults& later);

    [[nodiscard]] bool empty() const { return count_ == 0; }
    /// How many there were, kept or not.
    [[nodiscard]] std::size_t count() const { return count_; }
    /// The first ones.
    [[nodiscard]] const std::vector<core::Error>& kept() const { return kept_; }

private:
    std::vector<core::Error> kept_;
    std::size_t count_ = 0;
};

} // namespace catalog
