#include "catalog/read/cell_value.h"

#include <algorithm>
#include <charconv>
#include <chrono>
#include <cmath>
#include <cstdio>

namespace catalog {
namespace {

/// The letters of a format's first part that are neither quoted nor in brackets (colours, languages, conditions;
/// "[h]" counts hours and is none of a day).
std::string bare_letters(std::string_view code)
{
    std::string bare;
    for (std::size_t at = 0; at < code.size() && code[at] != ';'; ++at) {
        const char c = code[at];
        const auto skip_to = [&](char end) { at = std::min(code.find(end, at + 1), code.size()); };
        if (c == '"')
            skip_to('"');
        else if (c == '[')
            skip_to(']');
        else if (c == '\\' || c == '_' || c == '*')
            ++at;
        else
            bare += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return bare;
}

} // namespace

NumberForm form_of_code(std::string_view code)
{
    const auto bare = bare_letters(code);
    if (bare.find("general") != std::string::npos || bare == "@")
        return {};
    if (bare.find('%') != std::string::npos)
        return {NumberForm::Kind::Percent, 0};
    if (bare.find_first_of("yd") != std::string::npos || bare.find("mmm") != std::string::npos)
        return {NumberForm::Kind::Day, 0};
    if (bare.find_first_of("hs") != std::string::npos)
        return {NumberForm::Kind::Time, 0};
    if (!bare.empty() && bare.find_first_not_of('0') == std::string::npos)
        return {NumberForm::Kind::Plain, std::min<std::size_t>(bare.size(), 20)};
    return {};
}

NumberForm form_of_number(int built_in)
{
    if (built_in == 9 || built_in == 10)
        return {NumberForm::Kind::Percent, 0};
    const bool day = (built_in >= 14 && built_in <= 17) || built_in == 22 || (built_in >= 27 && built_in <= 31) ||
                     built_in == 36 || (built_in >= 50 && built_in <= 54) || built_in == 57 || built_in == 58;
    if (day)
        return {NumberForm::Kind::Day, 0};
    const bool time = (built_in >= 18 && built_in <= 21) || (built_in >= 32 && built_in <= 35) ||
                      (built_in >= 45 && built_in <= 47) || built_in == 55 || built_in == 56;
    return {time ? NumberForm::Kind::Time : NumberForm::Kind::Plain, 0};
}

std::optional<double> parse_number(std::string_view text)
{
    double number = 0;
    const auto* const end = text.data() + text.size();
    const auto read = std::from_chars(text.data(), end, number);
    if (read.ec != std::errc() || read.ptr != end || !std::isfinite(number))
        return std::nullopt;
    return number;
}

std::string number_text(double number)
{
    constexpr int digits_behind_first = 14;
    char letters[64];
    const auto rounded = std::to_chars(std::begin(letters), std::end(letters), number, std::chars_format::scientific,
                                       digits_behind_first);
    double fifteen = 0;
    std::from_chars(std::begin(letters), rounded.ptr, fifteen);
    if (fifteen == 0)
        return "0";
    const bool plain = std::abs(fifteen) < 1e15 && std::abs(fifteen) >= 1e-12;
    const auto end = std::to_chars(std::begin(letters), std::end(letters), fifteen,
                                   plain ? std::chars_format::fixed : std::chars_format::scientific);
    return {std::begin(letters), end.ptr};
}

std::string percent_text(double number)
{
    return number_text(number * 100) + "%";
}

std::optional<std::string> day_text(double days, bool since_1904)
{
    using namespace std::chrono;
    constexpr double first = 61;       // 1900-03-01
    constexpr double last = 2'958'465; // 9999-12-31
    constexpr int from_1904 = 1'462;   // days between the two beginnings
    const double since_1899 = days + (since_1904 ? from_1904 : 0);
    if (!(since_1899 >= first && since_1899 < last + 1))
        return std::nullopt;
    const year_month_day day(sys_days(year(1899) / 12 / 30) + std::chrono::days(static_cast<int>(since_1899)));
    char text[16];
    std::snprintf(text, sizeof text, "%04d-%02u-%02u", static_cast<int>(day.year()), static_cast<unsigned>(day.month()),
                  static_cast<unsigned>(day.day()));
    return text;
}

std::string shown_as(double number, const NumberForm& form, bool since_1904)
{
    if (form.kind == NumberForm::Kind::Percent)
        return percent_text(number);
    if (form.kind == NumberForm::Kind::Day)
        if (const auto day = day_text(number, since_1904))
            return *day;
    auto text = number_text(number);
    if (text.size() < form.least_digits && text.find_first_not_of("0123456789") == std::string::npos)
        text.insert(0, form.least_digits - text.size(), '0');
    return text;
}

} // namespace catalog
