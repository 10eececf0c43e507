// What stands under the help of every command.
#pragma once

namespace kiosk {

/// What the exit status of a command means.
inline constexpr const char* foot =
    "Exit status: 0 done; 1 done, and something was found wrong; 2 could not be done (one sentence says why).";

} // namespace kiosk
