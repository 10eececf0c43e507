// Words that tell of what no line of the panel prints and calories come from, or do not.
#pragma once

#include "core/product.h"

namespace core::audited {

/// Whether name or category speak of alcohol, or the ingredients name it. Asked only where calories do not add up.
[[nodiscard]] bool names_alcohol(const Product& product);

/// Whether the ingredients name a carbohydrate of few or no calories that need not have a line of its own: sugar
/// alcohols (21 CFR 101.9(c)(6)(iv)), allulose, fibers that are added. Without recorded ingredients: false.
[[nodiscard]] bool names_few_calories(const Product& product);

} // namespace core::audited
