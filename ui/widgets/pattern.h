// The patterns and marks of the two sides: they are told apart without any colour.
#pragma once

#include "ui/actions.h"
#include "ui/look/grid.h"
#include "ui/ui.h"

namespace ui {

/// Fills an area with the side's pattern: slanted lines on the left, dots on the right.
void pattern(const Ui& ui, Side side, const Area& area);

/// The side's mark, centred there: a filled square on the left, an open circle on the right.
void mark(const Ui& ui, Side side, ImVec2 centre, float radius);

/// The colours of a side in this theme.
[[nodiscard]] const SideColours& colours_of(const Ui& ui, Side side);

} // namespace ui
