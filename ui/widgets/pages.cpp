#include "ui/widgets/pages.h"

#include <algorithm>

namespace ui {

std::vector<std::size_t> page_starts(const std::vector<Block>& blocks, float height)
{
    std::vector<std::size_t> starts{0};
    float used = 0;
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        // A heading asks for room for itself and for all that must follow it directly.
        float wanted = blocks[i].height;
        for (std::size_t next = i; blocks[next].with_next && next + 1 < blocks.size(); ++next)
            wanted += blocks[next + 1].gap + blocks[next + 1].height;
        const bool first = i == starts.back();
        const float gap = first ? 0 : blocks[i].gap;
        const bool bound = i > 0 && blocks[i - 1].with_next;
        if (!first && !bound && used + gap + wanted > height) {
            starts.push_back(i);
            used = blocks[i].height;
        } else
            used += gap + blocks[i].height;
    }
    return starts;
}

Paging draw_page(const std::vector<Block>& blocks, const Area& area, int page)
{
    const auto starts = page_starts(blocks, area.height());
    Paging paging{static_cast<int>(starts.size()), 0};
    paging.page = std::clamp(page, 0, paging.pages - 1);
    const auto at = static_cast<std::size_t>(paging.page);
    const std::size_t stop = at + 1 < starts.size() ? starts[at + 1] : blocks.size();
    Area rest = area;
    for (std::size_t i = starts[at]; i < stop; ++i) {
        if (i != starts[at])
            rest.low.y += blocks[i].gap;
        Area place = rest;
        place.high.y = place.low.y + blocks[i].height;
        blocks[i].draw(place);
        rest.low.y += blocks[i].height;
    }
    return paging;
}

} // namespace ui
