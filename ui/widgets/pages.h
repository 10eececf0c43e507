// Turns what does not fit into pages: nothing scrolls, nothing is cut, nothing gets smaller.
#pragma once

#include "ui/look/grid.h"

#include <cstddef>
#include <functional>
#include <memory>
#include <vector>

namespace ui {

/// A piece that stays whole.
struct Block {
    float height = 0;
    std::function<void(const Area&)> draw;
    bool with_next = false; ///< a heading: not the last of its page, if what follows fits a page with it
    float gap = 0;          ///< room before it, except at the top of a page
    std::shared_ptr<const Block> again = nullptr; ///< said once more above it where it begins a page: its heading
};

/// All of them below each other, as if on one page.
[[nodiscard]] float height_of(const std::vector<Block>& blocks);

/// How many pages there are, and which one is shown (from 0).
struct Paging {
    int pages = 1;
    int page = 0;
};

/// Blocks dealt out to pages.
struct Pages {
    std::vector<std::size_t> starts; ///< the first block of each page
    Paging paging;
};

/// Deals blocks out to pages; the first page may have another height than the others. A page past the end is the last.
/// A block higher than its page gets one of its own.
[[nodiscard]] Pages deal_pages(const std::vector<Block>& blocks, float first_height, float other_height, int page);

/// Whether no page has a block that is higher than itself.
[[nodiscard]] bool pages_hold(const std::vector<Block>& blocks, float first_height, float other_height);

/// Draws the page that `pages` shows; a heading said again stands at its top, where the page holds it and the block.
void draw_page(const std::vector<Block>& blocks, const Pages& pages, const Area& area);

/// Deals and draws, where all pages are as high as the area.
Paging draw_page(const std::vector<Block>& blocks, const Area& area, int page);

} // namespace ui
