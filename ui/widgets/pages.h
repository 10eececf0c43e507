// Turns what does not fit into pages: nothing scrolls, nothing is cut, nothing gets smaller.
#pragma once

#include "ui/look/grid.h"

#include <functional>
#include <vector>

namespace ui {

/// A piece that stays whole.
struct Block {
    float height = 0;
    std::function<void(const Area&)> draw;
    bool with_next = false; ///< a heading: never the last of its page
    float gap = 0;          ///< room before it, except at the top of a page
};

/// How many pages there are, and which one is shown (from 0).
struct Paging {
    int pages = 1;
    int page = 0;
};

/// Where each page begins, for that height. A block higher than a page gets a page of its own.
[[nodiscard]] std::vector<std::size_t> page_starts(const std::vector<Block>& blocks, float height);

/// Draws one page of the blocks; a page past the end shows the last one.
Paging draw_page(const std::vector<Block>& blocks, const Area& area, int page);

} // namespace ui
