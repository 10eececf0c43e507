#include "catalog/read/number_cell.h"

#include <algorithm>

namespace catalog {
namespace {

bool is_digit(char c)
{
    return c >= '0' && c <= '9';
}

bool is_sign(char c)
{
    return c == '.' || c == ',';
}

auto refuse(std::string_view cell, std::string expected)
{
    return core::refuse(core::Error::Kind::BadValue, "number",
                        core::Place{"", 0, "", std::string(cell), std::move(expected)});
}

/// "1,500" or "12.250": one sign with one to three digits before it, the first no zero, and three behind it.
bool could_be_thousands(std::string_view number, std::size_t sign)
{
    return sign >= 1 && sign <= 3 && number.size() - sign == 4 && number.front() != '0';
}

/// Both readings of such a number: "1500 or 1.5".
std::string both_readings(std::string_view number, std::size_t sign)
{
    std::string part(number.substr(sign + 1));
    const std::string whole(number.substr(0, sign));
    const std::string thousands = whole + part;
    part.erase(part.find_last_not_of('0') + 1);
    return thousands + " or " + whole + (part.empty() ? "" : "." + part) + ", since it can be read as either";
}

core::Result<std::string> with_decimal_point(std::string_view number, bool comma_is_decimal)
{
    const auto sign = number.find_first_of(".,");
    if (sign == std::string_view::npos)
        return std::string(number);
    if (std::count_if(number.begin(), number.end(), is_sign) > 1)
        return refuse(number, "a number with at most one decimal sign, such as 1500 or 1.5");
    if (could_be_thousands(number, sign))
        return refuse(number, both_readings(number, sign));
    if (number[sign] == ',' && !comma_is_decimal)
        return refuse(number, "a number with a point, such as 0.5");
    std::string with_point(number);
    with_point[sign] = '.';
    return with_point;
}

} // namespace

core::Result<std::string> with_decimal_points(std::string_view cell, bool comma_is_decimal)
{
    std::string text;
    while (!cell.empty()) {
        const auto is_part = [](char c) { return is_digit(c) || is_sign(c); };
        const auto begin = std::find_if(cell.begin(), cell.end(), is_part);
        text.append(cell.begin(), begin);
        const auto end = std::find_if_not(begin, cell.end(), is_part);
        const auto number = with_decimal_point(std::string_view(begin, end), comma_is_decimal);
        if (!number)
            return tl::make_unexpected(number.error());
        text += *number;
        cell = std::string_view(end, cell.end());
    }
    return text;
}

} // namespace catalog
