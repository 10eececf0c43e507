// The 5-20 line: where a percent Daily Value stands. The same three parts on every screen, none of them tinted.
#pragma once

#include "ui/look/grid.h"
#include "ui/ui.h"

#include <optional>
#include <utility>

namespace ui {

/// Where a percent stands on the line, from 0 to 1: 0-5 takes a quarter, 5-20 and 20-100 three eighths each; past 100
/// it is 1, and an arrow says so.
[[nodiscard]] float place_on_line(int percent);

/// Draws the line with the left mark above it and the right mark below it, so that they never cover each other.
void line_5_20(const Ui& ui, const Area& area, std::optional<int> left, std::optional<int> right);

/// The height that the line wants.
[[nodiscard]] float line_5_20_height(const Ui& ui);

/// The figures 5, 20 and 100 (and the percent sign) over the ends of the three parts, for the head of a table; 100 is
/// left out where it would stand too close to 20.
void line_5_20_scale(const Ui& ui, const Area& area);

/// Where the first figure of that scale begins: what stands left of it must end before.
[[nodiscard]] float line_5_20_scale_begin(const Ui& ui, const Area& area);

} // namespace ui
