// One product that a station knows: its number, its names, its label, and where all that comes from.
#pragma once

#include "core/code/gtin.h"
#include "core/label/label.h"
#include "core/origin.h"

#include <string>

namespace core {

/// A product with its label.
struct Product {
    Gtin gtin;
    std::string name;  ///< "Oat rounds, honey"; never empty
    std::string brand; ///< may be empty
    std::string aisle; ///< where the store keeps it; may be empty
    std::string note;  ///< the leader's remark; may be empty
    Label label;
    Origin origin;
    bool operator==(const Product&) const = default;
};

} // namespace core
