// The letters: Noto Sans in two weights with signs from DejaVu Sans, at the five sizes of the window at hand.
#pragma once

#include "ui/look/sizes.h"

#include <imgui.h>

#include <span>

namespace ui {

/// The bytes of the font files, read by the machine; they must outlive the atlas.
struct FontFiles {
    std::span<const unsigned char> regular;
    std::span<const unsigned char> bold;
    std::span<const unsigned char> signs; ///< arrows and the like that the others lack
};

/// The fonts of one atlas.
struct Fonts {
    ImFont* note = nullptr;
    ImFont* bar = nullptr; ///< the bar's words and the notice: like note, but growing only a quarter as far
    ImFont* text = nullptr;
    ImFont* strong = nullptr; ///< bold, at the size of text
    ImFont* name = nullptr;   ///< bold
    ImFont* figure = nullptr;
    ImFont* headline = nullptr; ///< bold
};

/// Clears the atlas and fills it with our fonts at these sizes. Call between frames only; the texture must be made
/// anew. Throws std::runtime_error when a file is no font.
[[nodiscard]] Fonts build_fonts(ImFontAtlas& atlas, const FontFiles& files, const Sizes& sizes);

} // namespace ui
