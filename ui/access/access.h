// All that helps to use the station without a finger on what one sees: focus of the keys, the one switch, the voice's
// mark.
#pragma once

#include "ui/access/focus.h"
#include "ui/access/switch_scan.h"

#include <cstddef>
#include <optional>

namespace ui {

/// What lives beside the screen from frame to frame. Kept by the loop, settled by every frame that is drawn.
struct Access {
    Focus focus{};
    SwitchScan scan{};
    std::optional<std::size_t> spoken{}; ///< the note that is read aloud now
};

} // namespace ui
