#include "ui/widgets/button.h"

#include <algorithm>
#include <cmath>

namespace ui {
namespace {

/// Whether the focus, or a switch, presses what stands as this note.
bool key_presses(const Ui& ui, std::size_t note, std::string_view words)
{
    return ui.access && ui.access->focus.takes_press(note, words);
}

/// A filled arrow in the middle of the area.
void arrow(const Area& area, Sign sign, ImU32 colour)
{
    const float reach = std::floor(std::min(area.width(), area.height()) * 0.25F);
    const float forward = sign == Sign::Forward ? reach : -reach;
    const ImVec2 at{std::floor((area.low.x + area.high.x) / 2), std::floor((area.low.y + area.high.y) / 2)};
    canvas().AddTriangleFilled({at.x - forward, at.y - reach}, {at.x - forward, at.y + reach}, {at.x + forward, at.y},
                               colour);
}

} // namespace

float button_width(const Ui& ui, std::string_view words, Style style)
{
    return std::max(ui.look.sizes.target, text_width(ui, words, style) + 5 * ui.look.sizes.unit);
}

float button_height(const Ui& ui, std::string_view words, Style style, float width)
{
    const float words_height = text_height(ui, words, style, width - 4 * ui.look.sizes.unit);
    return std::max(ui.look.sizes.target, words_height + 3 * ui.look.sizes.unit);
}

bool button(const Ui& ui, TextId id, const Area& area, ButtonLook look)
{
    return button(ui, ui.language.text(id), id, area, look);
}

bool button(const Ui& ui, std::string_view words, std::optional<TextId> id, const Area& area, ButtonLook look)
{
    const auto& theme = ui.look.theme;
    const auto& sizes = ui.look.sizes;
    ImGui::SetCursorScreenPos(area.low);
    ImGui::PushID(words.data(), words.data() + words.size());
    const bool lifted = ImGui::InvisibleButton("touch", {std::max(1.0F, area.width()), std::max(1.0F, area.height())});
    const bool pressed = ImGui::IsItemActive() && ImGui::IsItemHovered();
    ImGui::PopID();
    const bool asked = key_presses(ui, ui.notes.size(), words) || lifted;

    const bool dark = pressed != look.chosen; // pressed: the surface takes the ink, the word takes the ground
    if (dark && !look.frameless)
        canvas().AddRectFilled(area.low, area.high, theme.ink, sizes.corner);
    else if (!look.frameless)
        canvas().AddRect(area.low, area.high, theme.hairline, sizes.corner, 0, sizes.line);

    const float padding = look.tight ? sizes.unit / 2 : 2 * sizes.unit;
    const Area inner = area.inset(padding, 0);
    const float height = text_height(ui, words, look.style, inner.width());
    const std::size_t noted = ui.notes.size();
    if (look.sign != Sign::Words) {
        arrow(area, look.sign, dark ? theme.ground : theme.ink);
        ui.notes.push_back({std::string(words), Role::Button, id, area.low, area.high, true, 0, false});
        return asked;
    }
    if (!look.frameless) {
        Area place = inner;
        place.low.y += std::floor((area.height() - height) / 2);
        text_in(ui, words, look.style, place, look.align, Role::Button, dark ? theme.ground : theme.ink);
    } else {
        ui.notes.push_back({std::string(words), Role::Button, id, area.low, area.high, true, 0, false});
        return asked;
    }
    if (ui.notes.size() > noted) { // the whole button is what is touched, not its letters
        Note& note = ui.notes.back();
        note.id = id;
        note.low = area.low;
        note.high = area.high;
        note.touchable = true;
        note.chosen = look.chosen;
    }
    return asked;
}

bool touched(const Ui& ui, TextId id, const Area& area, std::size_t first_note)
{
    if (first_note >= ui.notes.size())
        return false;
    ImGui::SetCursorScreenPos(area.low);
    ImGui::PushID(static_cast<int>(first_note));
    const bool lifted = ImGui::InvisibleButton("touch", {std::max(1.0F, area.width()), std::max(1.0F, area.height())});
    const bool pressed = ImGui::IsItemActive() && ImGui::IsItemHovered();
    ImGui::PopID();
    const bool asked = key_presses(ui, first_note, ui.notes[first_note].words) || lifted;
    if (pressed)
        canvas().AddRect(area.low, area.high, ui.look.theme.ink, ui.look.sizes.corner, 0, 3 * ui.look.sizes.line);
    Note& note = ui.notes[first_note];
    note.role = Role::Button;
    note.id = id;
    note.low = area.low;
    note.high = area.high;
    note.touchable = true;
    return asked;
}

} // namespace ui
