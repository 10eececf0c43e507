// Who is believed where two sources know one product: whoever held the package in hand. A leader's own sheet, what was
// typed at a station and a label for one place only stand over a release; of two releases the one that is loaded
// stands.
#pragma once

#include "core/product.h"

#include <cstddef>
#include <string>
#include <vector>

namespace catalog {

/// Whether an entry of the catalog stays although a release has one for its number.
[[nodiscard]] inline bool stands_over_release(const core::Product& entry)
{
    return entry.origin.kind != core::Origin::Kind::Release || entry.this_place_only;
}

/// One thing that two labels of one product say differently.
struct LabelDifference {
    std::string what;  ///< "sodium", "serving_size"
    std::string first; ///< as printed; empty: not printed
    std::string second;
    bool operator==(const LabelDifference&) const = default;
};

/// Two entries of one product that differ: the one that stood in the catalog, and the one that was loaded.
struct EntryDifference {
    static constexpr std::size_t most_samples = 5; ///< a report keeps so many of them
    core::Gtin gtin;
    std::string name; ///< as the entry that stands now has it
    std::vector<LabelDifference> found;
    bool operator==(const EntryDifference&) const = default;
};

/// What two labels say differently of the serving and of every nutrient that both print.
[[nodiscard]] std::vector<LabelDifference> differences(const core::Label& first, const core::Label& second);

} // namespace catalog
