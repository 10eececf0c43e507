// Codes of invented products in every form in which a release writes them.
#pragma once

#include <cstddef>
#include <string>

namespace test {

/// A product's number and how a record writes it.
struct ReleaseCode {
    std::string gtin_14; ///< empty where the written form names no product (a wrong check digit)
    std::string written;
};

/// The code of the nth product: always the same number, in the form that its record writes. Shares of the forms: 84 %
/// twelve digits, 9 % fourteen, 2.5 % thirteen, 1.8 % without the check digit, 1.5 % cases, 0.8 % UPC-E, 0.2 % EAN-8,
/// 0.2 % with a wrong check digit. Without `odd` all have twelve digits; an older record always has.
[[nodiscard]] ReleaseCode release_code(std::size_t product, bool odd, bool newest);

} // namespace test
