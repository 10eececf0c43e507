// What a leader asks of loading a release, and how it is told how far the load is.
#pragma once

#include "core/code/gtin.h"

#include <cstdint>
#include <functional>
#include <set>
#include <string>
#include <vector>

namespace catalog {

/// Which products are wanted; what is empty asks for nothing, and all of them together are asked for.
struct ReleaseChoice {
    std::vector<std::string> categories; ///< as the release names them; letters of either case
    std::vector<std::string> words;      ///< every one stands in the name, folded (catalog/store/fold.h)
    std::string market;                  ///< "United States"; letters of either case
    std::set<core::Gtin> numbers;
    [[nodiscard]] bool all() const { return categories.empty() && words.empty() && market.empty() && numbers.empty(); }
};

/// How far a load is.
struct LoadProgress {
    enum class Stage { Foods, Amounts, Products };
    Stage stage;
    std::uint64_t done;  ///< of the whole load, in the same units as `whole`
    std::uint64_t whole; ///< 0: not known yet
};

/// Told now and then; false cancels the load.
using TellProgress = std::function<bool(const LoadProgress&)>;

} // namespace catalog
