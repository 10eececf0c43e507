// A small copy of the camera's picture for the corner of the screen: in memory only, for as long as it is shown.
#pragma once

#include "kiosk/camera/frame.h"

namespace kiosk {

/// The picture with at most so many pixels, each the mean of a few, in the same shape; with left and right swapped
/// where it is shown as in a mirror. Without time and number.
[[nodiscard]] Frame small_picture(const GreyView& picture, int most_pixels, bool mirrored);

} // namespace kiosk
