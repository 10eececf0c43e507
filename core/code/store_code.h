// Which numbers name one product everywhere, and which are a store's own, a coupon, a case or something else.
// Source: GS1 General Specifications, section 1.4 (GS1 prefixes), GS1 prefix list.
#pragma once

#include "core/code/gtin.h"

namespace core {

/// What a number with a right check digit is for.
enum class CodeClass {
    Product,
    RestrictedRegion,  ///< in-store number of a region: the same digits mean other goods in another store
    RestrictedCompany, ///< number within one company
    Reserved,
    Unassigned,
    Unused, ///< kept free so that a GTIN-8 is never mistaken
    Demo,   ///< prefix 952: demonstrations and examples
    Coupon,
    Refund,
    Isbn,
    Ismn,
    Issn,
};

/// The class of the item itself; a GTIN-14 of a case is classed as what is in it. `printed_digits` is the length that
/// the code was read with: eight digits have prefixes of their own, and look the same in their 14-digit form.
[[nodiscard]] CodeClass class_of(const Gtin& gtin, std::size_t printed_digits = 13);

/// A case or carton (GTIN-14 with 1 to 8 in front) or a measured one (9): not what a shopper holds.
[[nodiscard]] bool is_case(const Gtin& gtin);

/// Whether a label may be found under this number in any store. Reserved and unassigned numbers may: prefixes are given
/// out over the years, and whoever enters a label holds the package in hand.
[[nodiscard]] bool names_one_product(CodeClass code_class);

} // namespace core
