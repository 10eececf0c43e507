// A grey picture drawn as a net of coloured corners: no texture, so it looks the same in a window and on paper.
#pragma once

#include "ui/camera_view.h"
#include "ui/look/grid.h"

namespace ui {

/// The largest area of the picture's shape within `room`, in its middle and at its top.
[[nodiscard]] Area picture_area(const GreyPicture& view, const Area& room);

/// Fills the area with the picture. Draws nothing where there is none.
void grey_picture(const GreyPicture& view, const Area& area);

} // namespace ui
