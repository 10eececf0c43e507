#include "kiosk/desk/today.h"

#include <array>
#include <ctime>

namespace kiosk {

std::string words_of_today()
{
    const std::time_t now = std::time(nullptr);
    std::tm day{};
    ::localtime_r(&now, &day);
    std::array<char, 16> text{};
    return {text.data(), std::strftime(text.data(), text.size(), "%Y-%m-%d", &day)};
}

} // namespace kiosk
