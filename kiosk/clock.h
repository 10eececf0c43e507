// The one clock of the station: always passed in, so that a test decides what time it is.
#pragma once

#include <chrono>
#include <functional>

namespace kiosk {

/// Time that only runs forward: for gaps, pauses and ages, never for dates.
using Clock = std::chrono::steady_clock;
using TimePoint = Clock::time_point;
using Milliseconds = std::chrono::milliseconds;

/// Asks what time it is now; `Clock::now` in the program, a variable in tests.
using Now = std::function<TimePoint()>;

} // namespace kiosk
