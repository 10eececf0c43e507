// Whether there are bars in a picture, how large and how sharp: a rough measure, cheap enough for each frame. It reads
// nothing; it tells people what to do before anything can be read.
#pragma once

#include "kiosk/camera/frame.h"

namespace kiosk {

/// What was found.
struct BarsSeen {
    bool found = false;
    float length = 0; ///< across the bars, from the first to the last, in pixels
    float share = 0;  ///< the same as a part of the picture's longer edge
    float sharp = 0;  ///< 1: from ink to paper within one pixel; 0.4: out of focus by one pixel (standard deviation)
};

/// The likeliest region of find_bars, measured. Any picture at all is safe to give.
[[nodiscard]] BarsSeen bars_seen(const GreyView& picture);

} // namespace kiosk
