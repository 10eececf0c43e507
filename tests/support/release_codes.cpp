#include "tests/support/release_codes.h"

#include "core/code/gtin.h"
#include "core/code/upc_e.h"
#include "core/figure/wide.h"

#include <cstdint>
#include <stdexcept>

namespace test {
namespace {

std::string padded(std::uint64_t number, std::size_t width)
{
    auto text = std::to_string(number);
    return text.insert(0, width - text.size(), '0');
}

/// A UPC-A of its own for every product, all over the number space: multiplication by a number without a common
/// divisor turns the ten digits around.
std::string upc_a(std::size_t product)
{
    const auto digits =
        static_cast<std::uint64_t>(static_cast<core::Wide>(product + 1) * 3'367'900'313U % 10'000'000'000U);
    const std::string body = std::string(1, "01678"[digits % 5]) + padded(digits, 10);
    return body + core::check_digit(body);
}

std::string upc_e(std::size_t nth)
{
    const std::string seven = "0" + padded(nth % 1'000'000, 6);
    for (char check = '0'; check <= '9'; ++check)
        if (core::expand_upc_e(seven + check))
            return seven + check;
    throw std::runtime_error("no check digit fits " + seven);
}

std::string ean_8(std::size_t nth)
{
    const std::string body = "952" + padded(nth % 10'000, 4);
    return body + core::check_digit(body);
}

std::string wrong(std::string code)
{
    code.back() = code.back() == '9' ? '0' : static_cast<char>(code.back() + 1);
    return code;
}

} // namespace

ReleaseCode release_code(std::size_t product, bool odd, bool newest)
{
    const auto upc = upc_a(product);
    const ReleaseCode plain{"00" + upc, upc};
    if (!odd)
        return plain;
    const auto place = product % 1000;
    if (place < 8) {
        const auto short_form = upc_e(product / 1000 * 8 + place);
        return {"00" + core::expand_upc_e(short_form).value(), short_form};
    }
    if (place < 10) {
        const auto eight = ean_8(product / 1000 * 2 + place - 8);
        return {"000000" + eight, eight};
    }
    if (place < 12)
        return {"", wrong(upc)};
    if (place < 27) {
        const std::string body = "10" + upc.substr(0, 11);
        const auto of_case = body + core::check_digit(body);
        return {of_case, of_case};
    }
    if (!newest || place >= 160)
        return plain;
    if (place < 45) { // one that a zero in front would make right is another product's number
        const bool is_another = core::Gtin::parse("0" + upc.substr(0, 11)).has_value();
        return {plain.gtin_14, is_another ? upc : upc.substr(0, 11)};
    }
    if (place < 70)
        return {plain.gtin_14, "0" + upc};
    return {plain.gtin_14, plain.gtin_14};
}

} // namespace test
