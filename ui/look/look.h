// Theme, sizes and fonts together: how this window looks right now.
#pragma once

#include "ui/look/fonts.h"
#include "ui/look/sizes.h"
#include "ui/look/theme.h"

namespace ui {

/// All that decides how a screen looks.
struct Look {
    const Theme& theme;
    Sizes sizes;
    Fonts fonts;
};

} // namespace ui
