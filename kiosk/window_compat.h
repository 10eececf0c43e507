// Dear ImGui's SDL2 backend: imgui_impl_sdl.h in 1.86 (Debian 12), imgui_impl_sdl2.h in 1.90 (Debian 13). Since 1.87 it
// hands a finger's events on one after another; before, it asks SDL how the mouse stands when a frame begins.
#pragma once

#include <SDL_events.h>
#include <imgui.h>

#if __has_include(<backends/imgui_impl_sdl2.h>)
#include <backends/imgui_impl_sdl2.h>
#else
#include <backends/imgui_impl_sdl.h>
#endif

namespace kiosk {

/// The first mouse button (a finger is one as well) as the events tell it. What SDL says when a frame begins may be
/// later: a finger that came down again by then would never have been lifted for ImGui, and both touches be lost.
class Finger {
public:
    /// Sees an event that ImGui is handed.
    void see(const SDL_Event& event)
    {
        if ((event.type != SDL_MOUSEBUTTONDOWN && event.type != SDL_MOUSEBUTTONUP) ||
            event.button.button != SDL_BUTTON_LEFT)
            return;
        at_ = {static_cast<float>(event.button.x), static_cast<float>(event.button.y)};
        down_ = event.type == SDL_MOUSEBUTTONDOWN;
        moved_ = true;
    }

    /// Tells ImGui, between the backend's new frame and its own. At most one event may have been seen since the last.
    void tell_imgui()
    {
#if IMGUI_VERSION_NUM < 18700
        ImGuiIO& io = ImGui::GetIO();
        if (moved_)
            io.MousePos = at_;
        io.MouseDown[0] = down_;
#endif
        moved_ = false;
    }

private:
    ImVec2 at_{0, 0};
    bool down_ = false;
    bool moved_ = false; ///< since the last frame
};

} // namespace kiosk
