// What lens, sensor and driver of a cheap camera do to light on its way to grey pixels.
#pragma once

#include "kiosk/camera/frame.h"
#include "tests/support/shop_scene.h"

#include <cstdint>

namespace test {

/// The flaws, in the order in which they happen. Lengths in pixels of the frame.
struct Lens {
    double softness = 0.5;     ///< of every lens and sensor: standard deviation of a bell curve
    double disc = 0;           ///< out of focus: radius of the disc that a point becomes
    double motion = 0;         ///< the hand moved while the shutter was open
    double motion_turn = 0;    ///< in which direction, in degrees
    double exposure = 1;       ///< 0.2: a fifth of the light that would make white paper white
    double banding = 0;        ///< lamps on 50 or 60 Hz: rows swing by this part
    double banding_rows = 400; ///< from one dark band to the next
    double banding_begins = 0; ///< in parts of a swing
    double grain = 0;          ///< of the sensor in the dark: standard deviation, in grey levels of 255
    double shot_grain = 0;     ///< grows with the root of the light; at white, in grey levels
    double gamma = 1;          ///< of the driver: 2.2 as pictures are stored; 1: light as it is
    double sharpening = 0;     ///< by the camera itself: 1 adds once what a small blur takes away
    int jpeg = 0;              ///< quality from 1 to 100; 0: not packed
    std::uint64_t seed = 1;    ///< of the grain
};

/// The frame that comes out. The same on every run and with every compiler, up to a grey level where a libc rounds
/// otherwise. Throws std::runtime_error when the JPEG library refuses.
[[nodiscard]] kiosk::Frame picture_of(Light light, const Lens& lens);

} // namespace test
