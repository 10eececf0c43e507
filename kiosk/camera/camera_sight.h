// What people are shown of the camera.
#pragma once

#include "kiosk/camera/frame.h"
#include "kiosk/camera/guidance.h"

namespace kiosk {

/// It lives in memory, until the next one comes.
struct CameraSight {
    Frame small;  ///< what it sees, with few pixels
    Frame middle; ///< the middle of it, as it is
    Hint hint = Hint::Aim;
};

} // namespace kiosk
