#include "kiosk/desk/today.h"

#include <array>

namespace kiosk {

std::string words_of_today()
{
    return words_of_day(std::time(nullptr));
}

std::string words_of_day(std::time_t moment)
{
    std::tm day{};
    if (::localtime_r(&moment, &day) == nullptr) // a year beyond all calendars
        return {};
    std::array<char, 16> text{};
    return {text.data(), std::strftime(text.data(), text.size(), "%Y-%m-%d", &day)};
}

} // namespace kiosk
