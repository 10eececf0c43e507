// One product that a station knows: its number, its names, its label, and where all that comes from.
#pragma once

#include "core/code/gtin.h"
#include "core/label/label.h"
#include "core/origin.h"
#include "core/rules/reference_amounts.h"

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
    /// Which row of the reference amounts the leader says that it is; no label tells. nullptr: nobody said.
    const ReferenceAmount* reference_food = nullptr;
    /// A label that the leader gave to a number which names nothing outside this place (core/code/store_code.h):
    /// repacked rice, bulk, deli. It never leaves in a bundle.
    bool this_place_only = false;
    /// What kind of food a release says that it is, in the release's words ("Cookies & Biscuits"); empty of a sheet.
    std::string category = {};
    bool operator==(const Product&) const = default;
};

} // namespace core
