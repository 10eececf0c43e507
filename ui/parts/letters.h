// Letters to touch, in the order of the alphabet, with keys for a blank, to take the last one back and to begin again.
// Which letters there are is a text of each language. Accents need no keys: the search ignores them.
#pragma once

#include "ui/look/grid.h"
#include "ui/ui.h"
#include "ui/widgets/text.h"

#include <cstddef>
#include <optional>
#include <string>

namespace ui {

/// A key that was touched.
struct LetterKey {
    enum class Kind { Letter, Space, Erase, Clear };
    Kind kind = Kind::Letter;
    std::string letter; ///< of Letter: a capital, UTF-8
    bool operator==(const LetterKey&) const = default;
};

/// How the keys are laid out: rows of letters, below them one row of the other keys.
struct LettersPlan {
    std::size_t columns = 1;
    std::size_t rows = 1;      ///< the row of the other keys included
    float width = 0;           ///< pixels; the narrowest that it may be
    float height = 0;          ///< pixels; the lowest that it may be
    Style style = Style::Name; ///< of the letters: smaller where the large ones would not fit
    bool shared = false;       ///< the other keys stand behind the last letters, and have no row of their own
};

/// The plan with the fewest columns that is no higher than `highest`, else the one with the most columns that is no
/// wider than `widest`. No key is smaller than all that is touched. With `may_share` the other keys need no row of
/// their own where the last row of letters leaves them room.
[[nodiscard]] LettersPlan plan_letters(const Ui& ui, float widest, float highest, bool may_share = false);

/// Draws it, its keys sharing the area, and tells which key was touched in this frame: it acts when the finger lifts.
[[nodiscard]] std::optional<LetterKey> letters(const Ui& ui, const LettersPlan& plan, Area area);

} // namespace ui
