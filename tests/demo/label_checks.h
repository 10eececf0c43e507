// What can be told to be wrong with one label from the label alone: the demo catalog has none of it, a spoiled row has
// one.
#pragma once

#include "core/product.h"

#include <string>
#include <vector>

namespace test::demo {

/// What is wrong.
enum class Doubt {
    AmountOffTheRule,   ///< an amount that the rounding rule never prints
    PercentOffTheRule,  ///< a percent that the rounding rule never prints
    PercentDoesNotFit,  ///< a percent that no true amount behind the printed one gives
    PartAboveWhole,     ///< added sugars above total sugars, and the like
    EnergyDoesNotFit,   ///< calories that fat, carbohydrate and protein do not give
    PackageDoesNotFit,  ///< servings times serving size is not the net quantity
    ServingsOffTheRule, ///< "about 14.5"
    ColumnsDoNotFit,    ///< the second column is not a multiple of the first, or has less than what was prepared
    ContainsDoesNotFit, ///< the Contains statement and the ingredients name different allergens
};

/// One thing that is wrong, and where: "total_fat", "second column: sodium".
struct Complaint {
    Doubt doubt;
    std::string where;
};

/// All that is wrong with the label of this product.
[[nodiscard]] std::vector<Complaint> complaints_about(const core::Product& product);

/// The complaints in words, for a failing test.
[[nodiscard]] std::string words(const std::vector<Complaint>& complaints);

} // namespace test::demo
