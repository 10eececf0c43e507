// A region of bars turned upright and averaged along the bars, a few rows of grey out of many.
#pragma once

#include "kiosk/camera/regions.h"

#include <vector>

namespace kiosk {

/// Bands of a region from one end of the bars to the other, each the mean of some lines across the bars.
struct Strip {
    double step = 1;                       ///< pixels of the picture from one value to the next
    double middle = 0;                     ///< index of the region's middle
    double across = 0;                     ///< the region's own width, in values
    std::vector<std::vector<float>> bands; ///< grey from 0 to 255; all of one length
};

/// Takes half as much again on both sides of the region, for the light margins and for what was missed; what lies
/// outside the picture is as its edge. At most eight bands.
[[nodiscard]] Strip straighten(const GreyView& picture, const Region& region);

} // namespace kiosk
