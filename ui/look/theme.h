// Colours of the three themes. No hue means good or bad anywhere; the two sides differ in place, name, hue and pattern.
#pragma once

#include <imgui.h>

namespace ui {

/// The colours of one side.
struct SideColours {
    ImU32 hue;
    ImU32 tint;
};

/// One theme; contrast figures are checked in tests/ui/look/theme_test.cpp.
struct Theme {
    ImU32 ground;
    ImU32 ink;
    ImU32 quiet;    ///< quiet ink, still 7:1 on the ground
    ImU32 hairline; ///< marks, 3:1
    SideColours left;
    SideColours right;
};

/// The themes by name.
enum class ThemeName { Paper, Night, Plain };

/// Light, dark, and black on white without tints.
[[nodiscard]] const Theme& paper();
[[nodiscard]] const Theme& night();
[[nodiscard]] const Theme& plain();
[[nodiscard]] const Theme& theme_of(ThemeName name);

} // namespace ui
