// Draws single widgets in a window that fills the display, as ui::draw does for screens.
#pragma once

#include "tests/support/headless.h"

#include <imgui.h>

#include <functional>
#include <vector>

namespace test {

/// Draws one frame of `drawing` inside a window.
inline void in_window(Headless& screen, const std::function<void(const ui::Ui&)>& drawing)
{
    screen.frame([&](const ui::Ui& ui, ui::Actions&) {
        ImGui::SetNextWindowPos({0, 0});
        ImGui::SetNextWindowSize({ui.look.sizes.width, ui.look.sizes.height});
        ImGui::Begin("widget", nullptr, ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoBackground);
        drawing(ui);
        ImGui::End();
    });
}

/// The corners of all that the last frame drew, in order.
inline std::vector<ImVec2> corners_drawn()
{
    std::vector<ImVec2> corners;
    const ImDrawData& drawn = *ImGui::GetDrawData();
    for (int list = 0; list < drawn.CmdListsCount; ++list)
        for (const auto& vertex : drawn.CmdLists[list]->VtxBuffer)
            corners.push_back(vertex.pos);
    return corners;
}

} // namespace test
