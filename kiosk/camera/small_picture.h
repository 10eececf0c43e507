// Small copies of the camera's picture for the screen: in memory only, for as long as it is shown.
#pragma once

#include "kiosk/camera/frame.h"

namespace kiosk {

/// The picture with at most so many pixels, each the mean of a few, in the same shape; with left and right swapped
/// where it is shown as in a mirror. Without time and number.
[[nodiscard]] Frame small_picture(const GreyView& picture, int most_pixels, bool mirrored);

/// The middle of the picture, pixel by pixel: as much of it as so many pixels hold, in the same shape and with left and
/// right swapped as above.
[[nodiscard]] Frame middle_of(const GreyView& picture, int most_pixels, bool mirrored);

} // namespace kiosk
