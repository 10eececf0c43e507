// Where the keys, the switch and the voice are, shown on the screen: rings over what was drawn.
#pragma once

#include "ui/access/stops.h"
#include "ui/ui.h"

#include <cstddef>
#include <span>

namespace ui {

/// A ring round a place: 4 px of ink with 2 px of ground on either side at 1280x800, so that it stands out from
/// whatever lies under it (3:1 and at least 2 px: WCAG 2.2, 2.4.13).
void ring(const Ui& ui, ImVec2 low, ImVec2 high);

/// One ring round several places that stand in one line.
void ring_round(const Ui& ui, std::span<const Stop> stops, std::span<const std::size_t> which);

/// A line at the left edge of what is being read aloud.
void reading_mark(const Ui& ui, const Note& note);

} // namespace ui
