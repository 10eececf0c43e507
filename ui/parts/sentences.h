// Headings and sentences as blocks for pages: a long one is cut between lines, so that any page holds its pieces.
#pragma once

#include "ui/ui.h"
#include "ui/widgets/pages.h"
#include "ui/widgets/text.h"

#include <string>
#include <vector>

namespace ui {

/// Adds `words` with `gap` pixels above them; a heading stays with what follows.
void add_words(const Ui& ui, const std::string& words, Style style, Role role, float width, float gap,
               std::vector<Block>& blocks);

} // namespace ui
