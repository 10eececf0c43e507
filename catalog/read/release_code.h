// The product number behind gtin_upc, which a release writes in many forms. Sources: GS1 General Specifications (check
// digit, UPC-E, restricted numbers); the forms were counted in 1,909 rows of the release of October 2023.
#pragma once

#include "core/code/gtin.h"

#include <optional>
#include <string_view>

namespace catalog {

/// What a written code is.
struct ReleaseCode {
    enum class Kind {
        Product,
        Case,        ///< a carton of several: not what a shopper holds
        NotAProduct, ///< names nothing outside one store, or no food
        WrongDigits, ///< a check digit that does not fit, in every way to read it
        Unreadable,  ///< no digits, or a number of them that no code has
        Missing,     ///< nothing stands there
    };
    Kind kind;
    std::optional<core::Gtin> gtin; ///< of a product or a case
    bool completed = false;         ///< zeros or the check digit were missing and have been added
};

/// Reads a code: 12, 13 and 14 digits; 8 as UPC-E when they begin with 0, else as EAN-8; 11 and fewer with the zeros or
/// the check digit that were lost.
[[nodiscard]] ReleaseCode read_release_code(std::string_view written);

} // namespace catalog
