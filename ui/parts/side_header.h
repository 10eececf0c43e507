// The heads of the two sides: place, name, hue and pattern; servings first.
#pragma once

#include "ui/actions.h"
#include "ui/look/grid.h"
#include "ui/state.h"
#include "ui/ui.h"
#include "ui/widgets/pages.h"

#include <vector>

namespace ui {

/// How much a head tells: all, or at large letters only mark and name (the rest then stands in the pages).
enum class HeadSize { Full, Short };

/// The height that both heads want in that width.
[[nodiscard]] float heads_height(const Ui& ui, const State& state, float width, HeadSize size);

/// Draws both heads side by side. A touch on a name opens its label; "Keep this" is a button of its own.
void heads(const Ui& ui, const State& state, const Area& area, HeadSize size, Actions& asked);

/// What the short head leaves out: first how many servings, of which size; the rest is brand and net quantity.
enum class HeadFacts { Servings, Rest };

/// The height that those facts of both sides want.
[[nodiscard]] float facts_height(const Ui& ui, const State& state, float width, HeadFacts facts);
/// Draws them, each behind its side's mark.
void draw_facts(const Ui& ui, const State& state, const Area& area, HeadFacts facts);

/// Whether each side is a piece of its own: where they stand one below the other, or fill half of a page.
[[nodiscard]] bool facts_part(const Ui& ui, const State& state, float width, HeadFacts facts);
/// Those facts of one side, a piece a line, the first behind the side's mark.
[[nodiscard]] std::vector<Block> fact_pieces(const Ui& ui, const State& state, Side side, float width, HeadFacts facts);

/// The two Keep buttons as a block, for where the short heads leave them out.
[[nodiscard]] float keeps_height(const Ui& ui, const State& state, float width);
/// Draws them, each below its side.
void keeps(const Ui& ui, const State& state, const Area& area, Actions& asked);

} // namespace ui
