// A finger for Dear ImGui: plain fields in 1.86 (Debian 12), a queue of events in 1.90 (Debian 13).
#pragma once

#include <imgui.h>

namespace test {

/// Puts the finger there, down or lifted, for the frames that follow.
inline void put_finger(ImVec2 at, bool down)
{
    ImGuiIO& io = ImGui::GetIO();
#if IMGUI_VERSION_NUM >= 18700
    io.AddMousePosEvent(at.x, at.y);
    io.AddMouseButtonEvent(0, down);
#else
    io.MousePos = at;
    io.MouseDown[0] = down;
#endif
}

} // namespace test
