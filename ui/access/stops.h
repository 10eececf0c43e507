// The places of a screen that a key, a switch or a voice can come to: taken from the notes of a frame, in reading
// order.
#pragma once

#include "ui/notes.h"

#include <cstddef>
#include <vector>

namespace ui {

/// One place: a thing to touch with all that stands in it, or a text by itself.
struct Stop {
    std::size_t note = 0;            ///< the note that it is; of a thing to touch, the one that is touched
    std::vector<std::size_t> with{}; ///< the notes inside the area that is touched, in reading order
    bool touchable = false;
    ImVec2 low{0, 0};
    ImVec2 high{0, 0};
};

/// All places of a frame. What stands inside an area that is touched belongs to it and is no place of its own.
[[nodiscard]] std::vector<Stop> stops_of(const Notes& notes);

/// Places in lines, as one switch goes through them: things to touch that stand beside each other are one line.
[[nodiscard]] std::vector<std::vector<std::size_t>> lines_of_stops(const std::vector<Stop>& stops);

} // namespace ui
