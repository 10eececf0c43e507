#include "catalog/read/release_code.h"

#include "core/code/store_code.h"
#include "core/code/upc_e.h"

#include <algorithm>
#include <string>

namespace catalog {
namespace {

using Kind = ReleaseCode::Kind;

ReleaseCode classed(const core::Gtin& gtin, std::size_t printed_digits, bool completed)
{
    if (core::is_case(gtin))
        return {Kind::Case, gtin, completed};
    if (!core::names_one_product(core::class_of(gtin, printed_digits)))
        return {Kind::NotAProduct, std::nullopt, completed};
    return {Kind::Product, gtin, completed};
}

std::optional<core::Gtin> parsed(const std::string& digits)
{
    auto gtin = core::Gtin::parse(digits);
    if (!gtin)
        return std::nullopt;
    return *std::move(gtin);
}

std::optional<core::Gtin> opened_upc_e(const std::string& eight)
{
    const auto twelve = core::expand_upc_e(eight);
    return twelve ? parsed(*twelve) : std::nullopt;
}

/// A UPC-A that lost zeros in front, or its check digit, on its way through a spreadsheet or a maker's form.
std::optional<core::Gtin> completed_upc_a(const std::string& digits)
{
    if (auto gtin = parsed(std::string(12 - digits.size(), '0') + digits))
        return gtin;
    if (digits.size() < 10)
        return std::nullopt;
    const std::string body = std::string(11 - digits.size(), '0') + digits;
    return parsed(body + core::check_digit(body));
}

ReleaseCode read_short(const std::string& digits)
{
    if (digits.size() == 7 || (digits.size() == 8 && digits.front() == '0')) {
        const bool lost_zero = digits.size() == 7;
        if (const auto gtin = opened_upc_e(lost_zero ? "0" + digits : digits))
            return classed(*gtin, 12, lost_zero);
    }
    if (digits.size() == 8) {
        if (const auto gtin = parsed(digits))
            return classed(*gtin, 8, false);
        return {Kind::WrongDigits, std::nullopt};
    }
    if (const auto gtin = completed_upc_a(digits))
        return classed(*gtin, 12, true);
    return {Kind::WrongDigits, std::nullopt};
}

} // namespace

ReleaseCode read_release_code(std::string_view written)
{
    while (!written.empty() && written.front() == ' ')
        written.remove_prefix(1);
    while (!written.empty() && written.back() == ' ')
        written.remove_suffix(1);
    if (written.empty())
        return {Kind::Missing, std::nullopt};
    const bool digits_only = std::all_of(written.begin(), written.end(), [](char c) { return c >= '0' && c <= '9'; });
    if (!digits_only || written.size() < 7 || written.size() > 14)
        return {Kind::Unreadable, std::nullopt};
    const std::string digits(written);
    if (digits.size() < 12)
        return read_short(digits);
    if (const auto gtin = parsed(digits))
        return classed(*gtin, digits.size(), false);
    return {Kind::WrongDigits, std::nullopt};
}

} // namespace catalog
