#include "core/origin.h"

namespace core {
namespace {

constexpr int days_in[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

bool is_leap(int year)
{
    return (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
}

int digits_at(std::string_view text, std::size_t at, std::size_t count)
{
    int value = 0;
    for (const char c : text.substr(at, count)) {
        if (c < '0' || c > '9')
            return -1;
        value = value * 10 + (c - '0');
    }
    return value;
}

std::string padded(int number, std::size_t width)
{
    std::string text = std::to_string(number);
    return text.insert(0, width > text.size() ? width - text.size() : 0, '0');
}

bool exists(int year, int month, int day)
{
    if (year < 1900 || month < 1 || month > 12 || day < 1)
        return false;
    return day <= days_in[month - 1] + (month == 2 && is_leap(year) ? 1 : 0);
}

tl::unexpected<Error> no_day(std::string_view found)
{
    return refuse(Error::Kind::BadValue, "date",
                  Place{"", 0, "", std::string(found.substr(0, 40)), "a day written as 2026-11-25"});
}

} // namespace

Result<Date> Date::parse(std::string_view text)
{
    if (text.size() == 10 && text[4] == '-' && text[7] == '-') {
        const int year = digits_at(text, 0, 4);
        const int month = digits_at(text, 5, 2);
        const int day = digits_at(text, 8, 2);
        if (exists(year, month, day))
            return Date(year, month, day);
    }
    return no_day(text);
}

Result<Date> Date::of_number(std::int64_t number)
{
    const auto year = number / 10'000;
    const int month = static_cast<int>(number / 100 % 100);
    const int day = static_cast<int>(number % 100);
    if (year > 9999 || !exists(static_cast<int>(year), month, day))
        return no_day(std::to_string(number));
    return Date(static_cast<int>(year), month, day);
}

std::string Date::text() const
{
    return padded(year_, 4) + "-" + padded(month_, 2) + "-" + padded(day_, 2);
}

} // namespace core
