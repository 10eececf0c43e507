// The day of the station's clock, for what people write down; nothing is ever decided by it.
#pragma once

#include <ctime>
#include <string>

namespace kiosk {

/// "2026-11-26", by the clock of this machine.
[[nodiscard]] std::string words_of_today();

/// The same for any moment.
[[nodiscard]] std::string words_of_day(std::time_t moment);

} // namespace kiosk
