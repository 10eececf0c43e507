// Makes another picture of the same code for a second try: less grain, sharper bars.
#pragma once

#include "kiosk/camera/frame.h"

namespace kiosk {

/// Averages every four rows (bars that stand roughly upright lose grain, not shape), draws each row twice as wide and
/// sharpens along it. What it is worth stands in docs/camera.md, and in the benchmark. Empty when the picture has fewer
/// than eight rows.
[[nodiscard]] Frame second_look(const GreyView& picture);

/// The picture with its first column as the first row: codes that stood upright lie.
[[nodiscard]] Frame laid_down(const GreyView& picture);

} // namespace kiosk
