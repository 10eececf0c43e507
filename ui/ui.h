// What every screen is given to draw with.
#pragma once

#include "ui/access/access.h"
#include "ui/look/look.h"
#include "ui/notes.h"
#include "ui/words/language.h"

namespace ui {

/// Words, look and the place for notes. Lives for one frame.
struct Ui {
    const Language& language;
    const Look& look;
    Notes& notes;
    Access* access = nullptr; ///< where the keys, the switch and the voice are; nothing where nobody uses any
};

} // namespace ui
