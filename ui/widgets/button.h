// What is touched: a word in a frame, at least 64 px high, acting when the finger lifts.
#pragma once

#include "ui/look/grid.h"
#include "ui/ui.h"
#include "ui/widgets/text.h"

#include <optional>
#include <string_view>

namespace ui {

/// What is drawn on a button: its words, or an arrow in their place, where a bar of large letters has no room for them.
/// The words are there all the same, for the voice and for whoever reads the notes.
enum class Sign { Words, Backward, Forward };

/// How a button looks.
struct ButtonLook {
    Style style = Style::Note;
    bool chosen = false;    ///< the one of several that holds now: ink ground, light word
    bool frameless = false; ///< a touchable area that draws its own content
    Align align = Align::Centre;
    bool tight = false; ///< hardly any room beside its words: a key of one letter
    Sign sign = Sign::Words;
};

/// The width that a button with these words wants.
[[nodiscard]] float button_width(const Ui& ui, std::string_view words, Style style = Style::Note);

/// The height of a button of that width; words may take two lines.
[[nodiscard]] float button_height(const Ui& ui, std::string_view words, Style style, float width);

/// A button with a fixed text. True in the frame in which the finger lifted on it. Equal buttons need ImGui::PushID.
bool button(const Ui& ui, TextId id, const Area& area, ButtonLook look = {});

/// A button with words of its own (a product's name).
bool button(const Ui& ui, std::string_view words, std::optional<TextId> id, const Area& area, ButtonLook look = {});

/// Makes an area that was drawn already one thing to touch: the first note of it, from `first_note` on, takes the area
/// and `id`. True in the frame in which the finger lifted on it. Equal areas need ImGui::PushID.
bool touched(const Ui& ui, TextId id, const Area& area, std::size_t first_note);

} // namespace ui
