#include "catalog/read/release_table.h"

#include <charconv>

namespace catalog {
namespace {

constexpr std::uint32_t most = 429'496'728; // another digit still fits
constexpr int most_decimals = 9;

/// Digits with at most one point, into `amount`; how many letters were read.
std::size_t read_digits(std::string_view text, ReleaseAmount& amount)
{
    bool point = false;
    bool full = false;
    std::size_t at = 0;
    int digits = 0;
    for (; at < text.size(); ++at) {
        const char c = text[at];
        if (c == '.' && !point) {
            point = true;
            continue;
        }
        if (c < '0' || c > '9')
            break;
        ++digits;
        full = full || amount.mantissa > most || (point && amount.decimals >= most_decimals);
        if (full && point)
            continue; // digits behind those that fit
        if (full)
            return 0;
        amount.mantissa = amount.mantissa * 10 + static_cast<std::uint32_t>(c - '0');
        amount.decimals = static_cast<std::int8_t>(amount.decimals + (point ? 1 : 0));
    }
    return digits > 0 ? at : 0;
}

/// "E-8" behind the digits. False for an exponent that no amount of a food has.
bool apply_exponent(std::string_view text, ReleaseAmount& amount)
{
    if (text.size() < 2 || (text.front() != 'E' && text.front() != 'e'))
        return false;
    text.remove_prefix(text[1] == '+' ? 2 : 1);
    int exponent = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), exponent);
    if (error != std::errc{} || end != text.data() + text.size())
        return false;
    if (amount.mantissa == 0)
        return true;
    int decimals = amount.decimals - exponent;
    while (decimals < 0 && amount.mantissa <= most) {
        amount.mantissa *= 10;
        ++decimals;
    }
    while (decimals > most_decimals) {
        amount.mantissa /= 10;
        --decimals;
    }
    amount.decimals = static_cast<std::int8_t>(decimals);
    return decimals >= 0;
}

std::uint32_t day_number(std::uint32_t year, std::uint32_t month, std::uint32_t day)
{
    if (year < 1900 || year > 9999 || month < 1 || month > 12 || day < 1 || day > 31)
        return 0;
    return year * 10'000 + month * 100 + day;
}

} // namespace

core::Result<ReleaseTable> ReleaseTable::open(ByteStream& bytes, const std::string& source,
                                              std::span<const ReleaseColumn> columns)
{
    PublishedCsv csv(bytes, source);
    const auto header = csv.header();
    if (!header)
        return tl::make_unexpected(header.error());
    auto places = find_columns(columns, *header, source);
    if (!places)
        return tl::make_unexpected(places.error());
    csv.want(places->wanted);
    return ReleaseTable(std::move(csv), std::move(places->field_of));
}

std::optional<std::uint32_t> read_whole(std::string_view text)
{
    std::uint32_t number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{})
        return std::nullopt;
    const std::string_view rest(end, static_cast<std::size_t>(text.data() + text.size() - end));
    if (!rest.empty() && rest != ".0") // data frame libraries write whole numbers so
        return std::nullopt;
    return number;
}

std::optional<ReleaseAmount> read_amount(std::string_view text)
{
    ReleaseAmount amount;
    const auto read = read_digits(text, amount);
    if (read == 0)
        return std::nullopt;
    if (read < text.size() && !apply_exponent(text.substr(read), amount))
        return std::nullopt;
    while (amount.decimals > 0 && amount.mantissa % 10 == 0) {
        amount.mantissa /= 10;
        --amount.decimals;
    }
    return amount;
}

std::uint32_t read_day(std::string_view text)
{
    if (text.size() >= 10 && text[4] == '-' && text[7] == '-') {
        const auto year = read_whole(text.substr(0, 4));
        const auto month = read_whole(text.substr(5, 2));
        const auto day = read_whole(text.substr(8, 2));
        return year && month && day ? day_number(*year, *month, *day) : 0;
    }
    const auto first = text.find('/');
    const auto second = first == std::string_view::npos ? first : text.find('/', first + 1);
    if (second == std::string_view::npos)
        return 0;
    const auto month = read_whole(text.substr(0, first));
    const auto day = read_whole(text.substr(first + 1, second - first - 1));
    const auto year = read_whole(text.substr(second + 1));
    return year && month && day ? day_number(*year, *month, *day) : 0;
}

} // namespace catalog
