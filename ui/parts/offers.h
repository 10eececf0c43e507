// Buttons to choose from, in rows that take as many lines as they need.
#pragma once

#include "ui/actions.h"
#include "ui/ui.h"
#include "ui/widgets/pages.h"

#include <string>
#include <vector>

namespace ui {

/// One button: what it says and what it asks for.
struct Offer {
    std::string words;
    TextId id;
    bool chosen = false;
    Action action;
};

/// Adds the buttons as blocks, one a row. `asked` must outlive the blocks.
void add_offers(const Ui& ui, const std::vector<Offer>& offers, float width, std::vector<Block>& blocks,
                Actions& asked);

/// The way to what the words of a screen mean.
[[nodiscard]] Offer words_offer(const Ui& ui);

} // namespace ui
