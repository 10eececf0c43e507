// The list of screens, and the one way to draw the one that the state names.
#pragma once

#include "ui/actions.h"
#include "ui/state.h"
#include "ui/ui.h"

#include <span>
#include <string_view>

namespace ui {

/// A screen: a function of state that reports what was asked for.
using Screen = void (*)(const Ui&, const State&, Actions&);

/// One screen of the list.
struct ScreenInfo {
    ScreenId id;
    std::string_view name; ///< for `pairstand render NAME`
    Screen draw;
};

/// All screens.
[[nodiscard]] std::span<const ScreenInfo> screens();

/// Another number for every screen and page.
[[nodiscard]] int screen_number(const State& state);

/// The sizes in which a window of that many pixels shows what the state names.
[[nodiscard]] Sizes sizes_of(const State& state, float width, float height);

/// Draws the screen that the state names into a window that fills the display. Between ImGui::NewFrame and Render.
void draw(const Ui& ui, const State& state, Actions& asked);

} // namespace ui
