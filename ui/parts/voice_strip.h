// The buttons of the voice while it speaks: pause, say again, slower, faster, quieter, louder, stop.
#pragma once

#include "ui/actions.h"
#include "ui/look/grid.h"
#include "ui/state.h"
#include "ui/ui.h"

namespace ui {

/// The height that they want in that width; 0 while the voice is off.
[[nodiscard]] float voice_strip_height(const Ui& ui, const State& state, float width);

/// Draws them.
void voice_strip(const Ui& ui, const State& state, const Area& area, Actions& asked);

} // namespace ui
