#include "ui/screens/screens.h"

#include "ui/screens/all.h"

namespace ui {
namespace {

constexpr ScreenInfo list[] = {
    {ScreenId::Welcome, "welcome", welcome_screen},
    {ScreenId::OneLabel, "one_label", one_label_screen},
    {ScreenId::Pair, "pair", pair_screen},
    {ScreenId::NotFound, "not_found", not_found_screen},
    {ScreenId::WhichProduct, "which_product", which_product_screen},
    {ScreenId::FindByName, "find_by_name", find_by_name_screen},
    {ScreenId::PickAisle, "pick_aisle", pick_aisle_screen},
    {ScreenId::PickProduct, "pick_product", pick_product_screen},
    {ScreenId::Prices, "prices", prices_screen},
    {ScreenId::Amounts, "amounts", amounts_screen},
    {ScreenId::Why, "why", why_screen},
    {ScreenId::Gallery, "gallery", gallery_screen},
    {ScreenId::Desk, "desk", desk_screen},
    {ScreenId::DeskFiles, "desk_files", desk_screen},
    {ScreenId::DeskFile, "desk_file", desk_screen},
    {ScreenId::DeskWork, "desk_work", desk_screen},
    {ScreenId::DeskReport, "desk_report", desk_screen},
    {ScreenId::DeskKey, "desk_key", desk_screen},
    {ScreenId::DeskAudit, "desk_audit", desk_screen},
    {ScreenId::DeskRule, "desk_rule", desk_screen},
    {ScreenId::DeskDoubt, "desk_doubt", desk_screen},
};

} // namespace

std::span<const ScreenInfo> screens()
{
    return list;
}

void draw(const Ui& ui, const State& state, Actions& asked)
{
    ImGui::SetNextWindowPos({0, 0});
    ImGui::SetNextWindowSize({ui.look.sizes.width, ui.look.sizes.height});
    ImGui::PushStyleVar(ImGuiStyleVar_WindowPadding, {0, 0});
    ImGui::PushStyleVar(ImGuiStyleVar_WindowBorderSize, 0.0F);
    ImGui::PushStyleVar(ImGuiStyleVar_WindowRounding, 0.0F);
    ImGui::PushStyleColor(ImGuiCol_WindowBg, ui.look.theme.ground);
    ImGui::Begin("station", nullptr,
                 ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove | ImGuiWindowFlags_NoSavedSettings |
                     ImGuiWindowFlags_NoNav | ImGuiWindowFlags_NoBringToFrontOnFocus);
    for (const auto& screen : list)
        if (screen.id == state.screen)
            screen.draw(ui, state, asked);
    ImGui::End();
    ImGui::PopStyleColor();
    ImGui::PopStyleVar(3);
}

} // namespace ui
