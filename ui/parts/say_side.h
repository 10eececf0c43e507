// What stands twice on a screen, once a side, is told by its place to the eye and by its side to the ear.
#pragma once

#include "ui/state.h"
#include "ui/ui.h"

#include <cstddef>

namespace ui {

/// The notes from `first_note` on are said with the name of their side before them.
void say_side(const Ui& ui, Side side, std::size_t first_note);

} // namespace ui
