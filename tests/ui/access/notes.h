// Notes of an invented screen, for the tests of focus, switch and voice.
#pragma once

#include "ui/notes.h"

#include <optional>
#include <string>

namespace test {

/// A thing of 100 x 60 pixels in a column and a line of a grid.
[[nodiscard]] inline ui::Note note_at(const std::string& words, int column, int line, bool touchable,
                                      std::optional<ui::TextId> id = std::nullopt)
{
    const ImVec2 low{static_cast<float>(column) * 120, static_cast<float>(line) * 80};
    ui::Note note;
    note.words = words;
    note.role = touchable ? ui::Role::Button : ui::Role::Text;
    note.id = id;
    note.low = low;
    note.high = {low.x + 100, low.y + 60};
    note.touchable = touchable;
    note.letter_px = 24;
    return note;
}

/// A heading, two buttons beside each other, a row with a figure in it, and a button below.
[[nodiscard]] inline ui::Notes small_screen()
{
    ui::Notes notes{note_at("Heading", 0, 0, false), note_at("One", 0, 1, true), note_at("Two", 1, 1, true)};
    ui::Note row = note_at("Sodium", 0, 2, true);
    row.high.x = 500;
    notes.push_back(row);
    notes.push_back(note_at("190 mg", 2, 2, false));
    notes.push_back(note_at("Last", 0, 3, true));
    return notes;
}

} // namespace test
