// Where bars are in a picture, and how they lie: looked for by the direction of edges, before anything is read.
#pragma once

#include "kiosk/camera/frame.h"

#include <vector>

namespace kiosk {

/// A place where many edges run in one direction. Lengths in pixels of the picture.
struct Region {
    double x = 0; ///< its middle
    double y = 0;
    double angle = 0;  ///< direction across the bars, in radians clockwise from the right; from -pi/2 to pi/2
    double across = 0; ///< from the first bar to the last, about
    double along = 0;  ///< length of the bars, about
    double energy = 0; ///< sum of the squared grey steps across the bars: how much there is to read
};

/// The regions of a picture that may hold a code, the likeliest first; at most `most`. Any picture is safe.
[[nodiscard]] std::vector<Region> find_bars(const GreyView& picture, std::size_t most = 4);

} // namespace kiosk
