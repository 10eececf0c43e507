// The audit of one label: what cannot be right in it, and what is worth a second look at the package.
#pragma once

#include "core/audit/doubt.h"
#include "core/product.h"

#include <vector>

namespace core {

/// Every doubt about one product's label, the surest first; empty (and nothing allocated) for a sound one. Reads the
/// column per serving and a second one, whose figures are held against one another and against its percents. A line
/// that was worked back from an amount per 100 is not accused of being off the grid.
[[nodiscard]] std::vector<Doubt> audit(const Product& product);

} // namespace core
