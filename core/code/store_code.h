// Which numbers name one product everywhere, and which are a store's own, a coupon, a case or something else.
// Source: GS1 General Specifications, section 1.4 (GS1 prefixes), GS1 prefix list.
#pragma once

#include "core/code/gtin.h"

#include <optional>

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

/// A number that whoever runs a place gives to what is packed there (repacked rice, bulk, deli). It means other goods
/// in the next place, so a label may be given to it for one place only. Source: GS1 General Specifications, release 18,
/// sections 2.1.13 and 2.1.14 (restricted circulation numbers).
[[nodiscard]] bool is_stores_own(CodeClass code_class);

/// The number behind which all packages of one item lie whose price or weight stands in their number: twelve digits
/// that begin with 2 (U.P.C. prefix 2) hold the item in the five digits behind it, and behind these what was measured,
/// which is 0 in the number given back. Nothing for a number that is no such one. How numbers with 20 to 29 in front
/// are divided each country says for itself, so those are taken whole. Source: GS1 General Specifications, release 18,
/// section 2.1.14.2 (variable measure in restricted circulation); that the item takes five digits is common practice in
/// the United States.
[[nodiscard]] std::optional<Gtin> without_measure(const Gtin& gtin);

} // namespace core
