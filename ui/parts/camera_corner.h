// What the camera sees, in a corner of the screen: a guide frame over it, and below it what to do.
#pragma once

#include "ui/look/grid.h"
#include "ui/state.h"
#include "ui/ui.h"
#include "ui/widgets/pages.h"

#include <vector>

namespace ui {

/// Whether the screen that the state names has the corner: those on which people are asked to scan.
[[nodiscard]] bool shows_camera(const State& state);

/// The width that the corner takes off a column of that width, the gap beside it included; 0 where there is no picture,
/// or where letters are so large that words need the room.
[[nodiscard]] float camera_corner_width(const Ui& ui, const State& state, float width);

/// Makes one block of these, which were set `camera_corner_width` narrower than `width`, with the corner at their
/// right. It is as high for each hint: nothing moves when that changes.
void set_beside_camera(const Ui& ui, const State& state, float width, std::vector<Block>& blocks);

} // namespace ui
