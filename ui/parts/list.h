// A list to choose from by finger: large rows of a name and a detail, in as many columns as fit, in pages.
#pragma once

#include "ui/look/grid.h"
#include "ui/ui.h"
#include "ui/widgets/pages.h"

#include <cstddef>
#include <functional>
#include <string>
#include <vector>

namespace ui {

/// One thing to choose.
struct Choice {
    std::string name;
    std::string detail; ///< may be empty
    std::function<void()> chosen;
};

/// The choices as rows for pages. `choices` must outlive them.
[[nodiscard]] std::vector<Block> list_blocks(const Ui& ui, const std::vector<Choice>& choices, float width,
                                             std::size_t most_columns = 3);

/// A choice that may be of any length, cut short with dots where it would take more than a few lines or, as a row of
/// that width, be higher than `height`. The beginning of its detail stays.
[[nodiscard]] Choice choice_within(const Ui& ui, Choice choice, float width, float height);

} // namespace ui
