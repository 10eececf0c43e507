#include "core/code/store_code.h"

#include <string_view>

namespace core {
namespace {

int number(std::string_view digits)
{
    int value = 0;
    for (const char c : digits)
        value = value * 10 + (c - '0');
    return value;
}

/// GTIN-8 has prefixes of its own (three digits, the first three of the eight).
CodeClass class_of_eight(int prefix)
{
    if (prefix < 100 || (prefix >= 200 && prefix < 300))
        return CodeClass::RestrictedCompany;
    if (prefix >= 140 && prefix < 200)
        return CodeClass::Unassigned;
    if (prefix >= 977)
        return CodeClass::Reserved;
    return CodeClass::Product;
}

struct PrefixRange {
    int from, to; // both included
    CodeClass code_class;
};

/// Source: GS1 General Specifications, section 1.4.2; 984 as in newer prefix lists.
constexpr PrefixRange prefixes[] = {
    {20, 29, CodeClass::RestrictedRegion},
    {40, 49, CodeClass::RestrictedCompany},
    {50, 59, CodeClass::Reserved},
    {140, 199, CodeClass::Unassigned},
    {200, 299, CodeClass::RestrictedRegion},
    {951, 951, CodeClass::Reserved},
    {952, 952, CodeClass::Demo},
    {977, 977, CodeClass::Issn},
    {978, 979, CodeClass::Isbn},
    {980, 980, CodeClass::Refund},
    {981, 984, CodeClass::Coupon},
    {990, 999, CodeClass::Coupon},
};

CodeClass class_of_thirteen(std::string_view thirteen)
{
    if (thirteen.substr(0, 4) == "9790")
        return CodeClass::Ismn;
    const int prefix = number(thirteen.substr(0, 3));
    for (const auto& range : prefixes)
        if (prefix >= range.from && prefix <= range.to)
            return range.code_class;
    return CodeClass::Product;
}

} // namespace

CodeClass class_of(const Gtin& gtin, std::size_t printed_digits)
{
    const std::string_view thirteen = std::string_view(gtin.digits()).substr(1);
    if (printed_digits == 8)
        return class_of_eight(number(thirteen.substr(5, 3)));
    if (thirteen.substr(0, 7) == "0000000")
        return CodeClass::RestrictedCompany;
    if (thirteen.substr(0, 5) == "00000")
        return CodeClass::Unused;
    return class_of_thirteen(thirteen);
}

bool is_case(const Gtin& gtin)
{
    return gtin.digits()[0] != '0';
}

bool names_one_product(CodeClass code_class)
{
    switch (code_class) {
    case CodeClass::Product:
    case CodeClass::Demo:
    case CodeClass::Reserved:
    case CodeClass::Unassigned:
        return true;
    case CodeClass::RestrictedRegion:
    case CodeClass::RestrictedCompany:
    case CodeClass::Unused:
    case CodeClass::Coupon:
    case CodeClass::Refund:
    case CodeClass::Isbn:
    case CodeClass::Ismn:
    case CodeClass::Issn:
        break;
    }
    return false;
}

bool is_stores_own(CodeClass code_class)
{
    return code_class == CodeClass::RestrictedRegion || code_class == CodeClass::RestrictedCompany;
}

std::optional<Gtin> without_measure(const Gtin& gtin)
{
    constexpr std::string_view prefix = "002"; // of the 14 digits of a U.P.C. that begins with 2
    constexpr std::size_t item_end = 8;        // the 2 and five digits
    if (!gtin.digits().starts_with(prefix))
        return std::nullopt;
    auto body = gtin.digits().substr(0, item_end) + "00000";
    body += check_digit(body);
    return *Gtin::parse(body);
}

} // namespace core
