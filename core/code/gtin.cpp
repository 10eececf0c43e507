#include "core/code/gtin.h"

#include <algorithm>

namespace core {
namespace {

bool is_digit(char c)
{
    return c >= '0' && c <= '9';
} // std::isdigit follows the locale; a code does not

bool is_gtin_length(std::size_t length)
{
    return length == 8 || length == 12 || length == 13 || length == 14;
}

} // namespace

char check_digit(std::string_view body)
{
    int sum = 0;
    int weight = 3; // the digit beside the check digit counts three times, then one, three, ...
    for (auto digit = body.rbegin(); digit != body.rend(); ++digit) {
        sum += weight * (*digit - '0');
        weight = 4 - weight;
    }
    return static_cast<char>('0' + (10 - sum % 10) % 10);
}

Result<Gtin> Gtin::parse(std::string_view text)
{
    constexpr std::size_t enough_to_show = 40; // a hostile code may be very long
    const auto shown = text.substr(0, enough_to_show);
    if (!std::all_of(text.begin(), text.end(), is_digit))
        return refuse(Error::Kind::NotDigits, shown);
    if (!is_gtin_length(text.size()))
        return refuse(Error::Kind::WrongLength, shown);
    if (check_digit(text.substr(0, text.size() - 1)) != text.back())
        return refuse(Error::Kind::WrongCheckDigit, shown);
    return Gtin(std::string(14 - text.size(), '0').append(text));
}

} // namespace core
