// From the raw text of a scan to the products it can mean, or to the reason why it means none.
#pragma once

#include "core/code/gtin.h"
#include "core/code/store_code.h"
#include "core/product.h"
#include "kiosk/input/scan.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace kiosk {

/// How a number is looked up; the catalog, or a table in tests.
using Lookup = std::function<std::optional<core::Product>(const core::Gtin&)>;

/// What a scan came to.
struct Scanned {
    enum class Answer {
        Found,      ///< one product, or two when eight digits fit both an EAN-8 and a UPC-E of this catalog
        Unknown,    ///< a product code that this catalog does not have
        Unreadable, ///< no product code at all
        NoProduct,  ///< a good code that names no product: see `code_class`
        Case,       ///< the number of a case
    };
    Answer answer = Answer::Unreadable;
    std::vector<core::Product> products;
    std::string code; ///< the digits to show: as they were read, or the number within an element string or a link
    core::CodeClass code_class = core::CodeClass::Product;
};

/// The numbers that a scan can stand for: one, or two for eight digits whose bars nobody told (EAN-8 and UPC-E).
struct Candidate {
    core::Gtin gtin;
    std::size_t printed_digits;
};
[[nodiscard]] std::vector<Candidate> candidates(const Scan& scan);

/// Looks up what was scanned. Throws what `lookup` throws.
[[nodiscard]] Scanned look_up(const Scan& scan, const Lookup& lookup);

} // namespace kiosk
