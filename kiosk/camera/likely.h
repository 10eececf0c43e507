// What the camera is not sure of: the codes that its pictures may show.
#pragma once

#include "kiosk/camera/reader.h"
#include "kiosk/clock.h"

#include <vector>

namespace kiosk {

/// Codes with right check digits between which the camera's pictures could not decide, likeliest first; at most about
/// twenty. One of them, or none: they are for a question and never for an answer.
struct Likely {
    std::vector<Reading> codes;
    TimePoint when; ///< of the last picture
};

} // namespace kiosk
