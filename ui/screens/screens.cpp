#include "ui/screens/screens.h"

#include "ui/access/lit.h"
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
    {ScreenId::Words, "words", words_screen},
    {ScreenId::GroupView, "group_view", group_view_screen},
    {ScreenId::Ways, "ways", ways_screen},
    {ScreenId::Measure, "measure", measure_screen},
    {ScreenId::StillThere, "still_there", still_there_screen},
    {ScreenId::LikelyProduct, "likely_product", likely_product_screen},
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
    {ScreenId::DeskCamera, "desk_camera", desk_screen},
};

/// Rings and marks lie over all that was drawn; so they come last, when it is known what stands where.
void show_access(const Ui& ui, int screen)
{
    Access& access = *ui.access;
    access.focus.settle(ui.notes, screen);
    const auto stops = access.focus.stops();
    if (access.scan.on())
        ring_round(ui, stops, access.scan.lit(stops));
    else if (const Stop* at = access.focus.at(); at && access.focus.shown())
        ring(ui, at->low, at->high);
    if (access.spoken && *access.spoken < ui.notes.size())
        reading_mark(ui, ui.notes[*access.spoken]);
}

} // namespace

int screen_number(const State& state)
{
    constexpr int pages = 10'000;
    return static_cast<int>(state.screen) * pages + state.page % pages;
}

Sizes sizes_of(const State& state, float width, float height)
{
    return sizes_for({width, height, state.px_per_mm, state.distance_mm,
                      state.screen == ScreenId::GroupView ? state.group_distance_mm : 0},
                     state.text_percent);
}

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
    if (ui.access)
        show_access(ui, screen_number(state));
    ImGui::End();
    ImGui::PopStyleColor();
    ImGui::PopStyleVar(3);
}

} // namespace ui
