// The number that names a product: GTIN-8, -12, -13 or -14 with a right check digit, kept as 14 digits.
// Source: GS1 General Specifications, section 7.9 (check digit calculation).
#pragma once

#include "core/error.h"

#include <compare>
#include <string>
#include <string_view>

namespace core {

/// The modulo-10 check digit ('0' to '9') that belongs behind these digits. `body` holds digits only.
[[nodiscard]] char check_digit(std::string_view body);

/// A product number with a right check digit, kept in its 14-digit form: the same item has one Gtin, however it was
/// read.
class Gtin {
public:
    /// Takes 8, 12, 13 or 14 digits, nothing else (no blanks, no signs).
    /// Errors: NotDigits, WrongLength, WrongCheckDigit, in that order.
    [[nodiscard]] static Result<Gtin> parse(std::string_view text);

    /// Always 14 digits.
    [[nodiscard]] const std::string& digits() const { return digits_; }
    auto operator<=>(const Gtin&) const = default;

private:
    explicit Gtin(std::string digits) : digits_(std::move(digits)) {}
    std::string digits_;
};

} // namespace core
