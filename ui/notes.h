// What the last frame showed: every saying with its place, in reading order. Tests, voice and switch read it.
#pragma once

#include "ui/words/text.h"

#include <imgui.h>

#include <optional>
#include <string>
#include <vector>

namespace ui {

/// What a thing on the screen is, for whoever reads or operates it without seeing it.
enum class Role { Text, Heading, Figure, Button, Picture };

/// One thing that was shown.
struct Note {
    std::string words;
    Role role = Role::Text;
    std::optional<TextId> id; ///< the fixed text of a button; nothing for a product's own words
    ImVec2 low{0, 0};         ///< pixels, top left
    ImVec2 high{0, 0};        ///< pixels, bottom right
    bool touchable = false;
    float letter_px = 0; ///< the em of its letters, in pixels
    bool cut = false;    ///< a word is wider, or its lines are higher, than the place given to them: a mistake of ours
    bool chosen = false; ///< a button that holds now, of several
    std::string said = {}; ///< what a voice says in place of the words; empty: the words
};

using Notes = std::vector<Note>;

} // namespace ui
