// What every screen has in the same place: the answer to the last scan, and the bar with Back, Start over and the rest.
#pragma once

#include "ui/actions.h"
#include "ui/look/grid.h"
#include "ui/state.h"
#include "ui/ui.h"
#include "ui/widgets/pages.h"

namespace ui {

/// The areas of a screen.
struct Frame {
    Area body;   ///< for the screen's own content
    Area notice; ///< above the bar, or beside the page buttons where those have the bar's top row to themselves
    Area bar;
    Area voice;                 ///< above the bar while the voice speaks
    bool bar_gives_way = false; ///< the voice's buttons stand in the place of what is always there
    float rule = 0;             ///< where the line stands that parts the content from the rest
};

/// Cuts the window into body, notice and bar.
[[nodiscard]] Frame frame_of(const Ui& ui, const State& state);

/// Draws notice and bar; page buttons are there when there is more than one page. Call after the body: reading order.
void close_frame(const Ui& ui, const State& state, const Frame& frame, const Paging& paging, Actions& asked);

} // namespace ui
