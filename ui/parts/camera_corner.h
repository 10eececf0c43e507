// What the camera sees, in a corner of the screen: a guide frame over it, and below it what to do.
#pragma once

#include "ui/look/grid.h"
#include "ui/state.h"
#include "ui/ui.h"
#include "ui/widgets/pages.h"

#include <optional>
#include <vector>

namespace ui {

/// Whether the screen that the state names shows what the camera sees: those on which people are asked to scan, and the
/// leader's test picture.
[[nodiscard]] bool shows_camera(const State& state);

/// The width that the corner takes off a column of that width, the gap beside it included; 0 where there is no picture,
/// or where letters are so large that words need the room.
[[nodiscard]] float camera_corner_width(const Ui& ui, const State& state, float width);

/// Makes one block of these, which were set `camera_corner_width` narrower than `width`, with the corner at their
/// right. It is as high for each hint: nothing moves when that changes.
void set_beside_camera(const Ui& ui, const State& state, float width, std::vector<Block>& blocks);

/// The picture, and beside it its middle pixel by pixel, as large as a place of that width and height allows, with
/// words below them, for the leader's test picture; no lower than `least`, whatever room large letters take. Nothing
/// where there is none.
[[nodiscard]] std::optional<Block> camera_large(const Ui& ui, const State& state, float width, float height,
                                                float least);

} // namespace ui
