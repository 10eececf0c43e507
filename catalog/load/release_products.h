// The third pass over a release: the records of every product with their amounts, by rising numbers, to products.
#pragma once

#include "catalog/load/release_amounts.h"
#include "core/product.h"

#include <functional>
#include <string>
#include <vector>

namespace catalog {

/// What the passes before have made.
struct ReadRelease {
    std::vector<RecordHead> heads; ///< sorted
    std::string name;              ///< "FoodData Central, Branded Foods, 2023-10-26"
    int significant_digits = 0;    ///< see ServingBehind
    std::uint32_t newest_day = 0;  ///< of its records; 0: none has a day
    RecordSet left_out = {};       ///< records that were read and are not among the heads
};

/// The day of the newest record; 0 where none has one.
[[nodiscard]] std::uint32_t newest_day(const std::vector<RecordHead>& heads);

/// The name of a release, with the day of its newest record.
[[nodiscard]] std::string release_name(std::uint32_t newest);

/// Makes the products and hands each on; of several records the first that has amounts. `go_on` is asked now and then
/// with the number of records done. False where it ended the work.
bool make_products(const ReadRelease& release, const Spill& texts, const AmountParts& amounts, ReleaseReport& report,
                   const std::function<void(core::Product)>& take, const std::function<bool(std::uint64_t)>& go_on);

} // namespace catalog
