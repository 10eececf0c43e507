#include "ui/widgets/pages.h"

#include <algorithm>

namespace ui {
namespace {

/// The room that a block asks for: a heading asks for what must follow it too.
float room_for(const std::vector<Block>& blocks, std::size_t at)
{
    float room = blocks[at].height;
    for (; blocks[at].with_next && at + 1 < blocks.size(); ++at)
        room += blocks[at + 1].gap + blocks[at + 1].height;
    return room;
}

} // namespace

Pages deal_pages(const std::vector<Block>& blocks, float first_height, float other_height, int page)
{
    Pages pages;
    pages.starts.push_back(0);
    float used = 0;
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        const bool first = i == pages.starts.back();
        const float height = pages.starts.size() == 1 ? first_height : other_height;
        const float before = used + (first ? 0 : blocks[i].gap);
        const float together = room_for(blocks, i);
        const bool too_much =
            before + blocks[i].height > height || (together <= other_height && before + together > height);
        if (!first && too_much) {
            pages.starts.push_back(i);
            used = blocks[i].height;
        } else
            used = before + blocks[i].height;
    }
    pages.paging.pages = static_cast<int>(pages.starts.size());
    pages.paging.page = std::clamp(page, 0, pages.paging.pages - 1);
    return pages;
}

void draw_page(const std::vector<Block>& blocks, const Pages& pages, const Area& area)
{
    const auto at = static_cast<std::size_t>(pages.paging.page);
    const std::size_t stop = at + 1 < pages.starts.size() ? pages.starts[at + 1] : blocks.size();
    Area rest = area;
    for (std::size_t i = pages.starts[at]; i < stop; ++i) {
        if (i != pages.starts[at])
            rest.low.y += blocks[i].gap;
        Area place = rest;
        place.high.y = place.low.y + blocks[i].height;
        blocks[i].draw(place);
        rest.low.y += blocks[i].height;
    }
}

Paging draw_page(const std::vector<Block>& blocks, const Area& area, int page)
{
    const Pages pages = deal_pages(blocks, area.height(), area.height(), page);
    draw_page(blocks, pages, area);
    return pages.paging;
}

} // namespace ui
