#include "core/code/upc_e.h"

#include "core/code/gtin.h"

#include <algorithm>

namespace core {
namespace {

bool all_digits(std::string_view text)
{
    return std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

/// The ten digits between number system and check digit that six digits stand for.
std::string expand_six(std::string_view six)
{
    const std::string d(six);
    switch (d[5]) {
    case '0':
    case '1':
    case '2':
        return d.substr(0, 2) + d[5] + "0000" + d.substr(2, 3);
    case '3':
        return d.substr(0, 3) + "00000" + d.substr(3, 2);
    case '4':
        return d.substr(0, 4) + "00000" + d[4];
    default:
        return d.substr(0, 5) + "0000" + d[5];
    }
}

} // namespace

Result<std::string> expand_upc_e(std::string_view eight)
{
    if (!all_digits(eight))
        return refuse(Error::Kind::NotDigits, eight.substr(0, 40));
    if (eight.size() != 8)
        return refuse(Error::Kind::WrongLength, eight.substr(0, 40));
    if (eight[0] != '0' && eight[0] != '1')
        return refuse(Error::Kind::NotAProductCode, eight);
    std::string twelve = eight[0] + expand_six(eight.substr(1, 6));
    if (check_digit(twelve) != eight[7])
        return refuse(Error::Kind::WrongCheckDigit, eight);
    return twelve + eight[7];
}

bool is_printable_upc_e(std::string_view six)
{
    if (six.size() != 6 || !all_digits(six))
        return false;
    switch (six[5]) {
    case '0':
    case '1':
    case '2':
        return true;
    case '3':
        return six[2] >= '3'; // 0 to 2 there are written with the last digit 0 to 2
    case '4':
        return six[3] != '0';
    default:
        return six[4] != '0';
    }
}

Result<std::string> shorten_to_upc_e(std::string_view twelve)
{
    const auto gtin = Gtin::parse(twelve);
    if (!gtin)
        return tl::make_unexpected(gtin.error());
    if (twelve.size() != 12)
        return refuse(Error::Kind::WrongLength, twelve);
    const std::string_view body = twelve.substr(1, 10);
    const std::string_view maker = body.substr(0, 5);
    const std::string_view item = body.substr(5, 5);
    std::string tries[] = {
        std::string(maker.substr(0, 2)).append(item.substr(2, 3)) + maker[2],
        std::string(maker.substr(0, 3)).append(item.substr(3, 2)) + '3',
        std::string(maker.substr(0, 4)) + item[4] + '4',
        std::string(maker) + item[4],
    };
    for (const auto& six : tries)
        if ((twelve[0] == '0' || twelve[0] == '1') && is_printable_upc_e(six) && expand_six(six) == body)
            return six;
    return refuse(Error::Kind::NotAProductCode, twelve);
}

} // namespace core
