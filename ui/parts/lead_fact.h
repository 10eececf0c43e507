// The large facts at the head of a label: servings, serving size, calories.
#pragma once

#include "ui/ui.h"
#include "ui/widgets/pages.h"
#include "ui/words/label_words.h"

namespace ui {

/// A large fact: its name left, its figure right; below each other where they do not fit beside each other. Refers to
/// `piece`, which must live until the block is drawn.
Block lead_fact(const Ui& ui, const LabelPiece& piece, float width);

} // namespace ui
