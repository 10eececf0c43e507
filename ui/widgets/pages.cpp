#include "ui/widgets/pages.h"

#include <algorithm>

namespace ui {
namespace {

/// The room that a block asks for: a heading asks for what must follow it too, as far as a whole page can hold it.
float room_for(const std::vector<Block>& blocks, std::size_t at, float page_height)
{
    float room = blocks[at].height;
    for (; blocks[at].with_next && at + 1 < blocks.size(); ++at) {
        const float more = blocks[at + 1].gap + blocks[at + 1].height;
        if (room + more > page_height)
            break;
        room += more;
    }
    return room;
}

/// What a page that begins with this block says again, if the page can hold both.
const Block* said_again(const Block& block, float page_height)
{
    const Block* again = block.again.get();
    return again && again->height + block.height <= page_height ? again : nullptr;
}

/// A last page of one short block looks forgotten, and its reader has lost what it belongs to: what comes before it
/// moves there too, where the page before keeps enough.
void fill_last_page(const std::vector<Block>& blocks, float page_height, std::vector<std::size_t>& starts)
{
    if (starts.size() < 2 || starts.back() + 1 != blocks.size() || blocks.back().height > page_height / 5)
        return;
    const std::size_t before = starts[starts.size() - 2];
    std::size_t start = starts.back() - 1;
    while (start > before && blocks[start - 1].with_next)
        --start;
    float height = 0;
    for (std::size_t i = start; i < blocks.size(); ++i)
        height += blocks[i].height + blocks[i].gap;
    if (const Block* again = said_again(blocks[start], page_height))
        height += again->height;
    if (start >= before + 2 && height <= page_height)
        starts.back() = start;
}

} // namespace

float height_of(const std::vector<Block>& blocks)
{
    float height = 0;
    for (std::size_t i = 0; i < blocks.size(); ++i)
        height += blocks[i].height + (i > 0 ? blocks[i].gap : 0);
    return height;
}

Pages deal_pages(const std::vector<Block>& blocks, float first_height, float other_height, int page)
{
    Pages pages;
    pages.starts.push_back(0);
    float used = 0;
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        const bool first = i == pages.starts.back();
        const float height = pages.starts.size() == 1 ? first_height : other_height;
        const float before = used + (first ? 0 : blocks[i].gap);
        const Block* again = said_again(blocks[i], other_height);
        const float lead = again ? again->height : 0;
        const float together = room_for(blocks, i, other_height - lead);
        const bool too_much = before + together > height;
        if (!first && too_much) {
            pages.starts.push_back(i);
            used = lead + blocks[i].height;
        } else
            used = before + blocks[i].height;
    }
    fill_last_page(blocks, other_height, pages.starts);
    pages.paging.pages = static_cast<int>(pages.starts.size());
    pages.paging.page = std::clamp(page, 0, pages.paging.pages - 1);
    return pages;
}

bool pages_hold(const std::vector<Block>& blocks, float first_height, float other_height)
{
    const std::vector<std::size_t> starts = deal_pages(blocks, first_height, other_height, 0).starts;
    for (std::size_t page = 0; page < starts.size() && starts[page] < blocks.size(); ++page)
        if (blocks[starts[page]].height > (page == 0 ? first_height : other_height))
            return false;
    return true;
}

void draw_page(const std::vector<Block>& blocks, const Pages& pages, const Area& area)
{
    const auto at = static_cast<std::size_t>(pages.paging.page);
    const std::size_t stop = at + 1 < pages.starts.size() ? pages.starts[at + 1] : blocks.size();
    Area rest = area;
    if (at > 0)
        if (const Block* again = said_again(blocks[pages.starts[at]], area.height()))
            again->draw(rest.cut_top(again->height));
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
