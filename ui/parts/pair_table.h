// The rows of a pair under their headings, which are said again on every page that goes on with them.
#pragma once

#include "ui/actions.h"
#include "ui/look/grid.h"
#include "ui/state.h"
#include "ui/ui.h"
#include "ui/widgets/pages.h"

#include <vector>

namespace ui {

/// The rows as blocks for pages, with their headings ("Less of", "More of", the rest) and the scale of the lines below
/// them. `pair` and `asked` must outlive them. A row that is touched asks where it comes
/// from.
[[nodiscard]] std::vector<Block> table_blocks(const Ui& ui, const PairWords& pair, float width, Actions& asked);

} // namespace ui
