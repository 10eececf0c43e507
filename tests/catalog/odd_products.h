// Products with every odd form that a label can have, for what must come back as it was put.
#pragma once

#include "core/product.h"

#include <string>
#include <vector>

namespace test {

/// One of them.
struct OddProduct {
    std::string why; ///< what is odd about it
    core::Product product;
    bool beyond_labels = false; ///< it holds what no label prints, to reach the ends of what is stored
};

[[nodiscard]] std::vector<OddProduct> odd_products();

} // namespace test
