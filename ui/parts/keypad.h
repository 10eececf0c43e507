// Ten digits to touch, with keys to take the last one back and to begin again. Each key acts when the finger lifts.
#pragma once

#include "ui/look/grid.h"
#include "ui/ui.h"

#include <optional>

namespace ui {

/// A key that was touched.
struct KeypadKey {
    enum class Kind { Digit, Erase, Clear };
    Kind kind = Kind::Digit;
    int digit = 0;
    bool operator==(const KeypadKey&) const = default;
};

/// Whether letters are so large that those on its keys are smaller: what stands beside it should be, too.
[[nodiscard]] bool keypad_is_small(const Ui& ui);

/// The height that it wants: four rows of keys, each at least as large as all that is touched.
[[nodiscard]] float keypad_height(const Ui& ui);

/// The narrowest that it may be, so that its words stay whole.
[[nodiscard]] float keypad_width(const Ui& ui);

/// Draws it and tells which key was touched in this frame. Its rows share the height of the area.
[[nodiscard]] std::optional<KeypadKey> keypad(const Ui& ui, Area area);

} // namespace ui
