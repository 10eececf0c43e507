#include "ui/widgets/pages.h"

#include <doctest/doctest.h>

#include <memory>
#include <string>
#include <vector>

namespace {

using Starts = std::vector<std::size_t>;

ui::Block block(float height, float gap = 0, bool with_next = false)
{
    return {height, [](const ui::Area&) {}, with_next, gap};
}

ui::Block heading(float height, float gap = 0)
{
    return block(height, gap, true);
}

} // namespace

TEST_CASE("pages: blocks are dealt out in order, whole, and headings go with what they head")
{
    struct Case {
        std::string why;
        std::vector<ui::Block> blocks;
        float first;
        float others;
        Starts starts;
    };
    const Case cases[] = {
        {"nothing is one empty page", {}, 100, 100, {0}},
        {"all fit, to the pixel", {block(40), block(60)}, 100, 100, {0}},
        {"one pixel too many", {block(40), block(61)}, 100, 100, {0, 1}},
        {"gaps count between blocks", {block(40), block(60, 1)}, 100, 100, {0, 1}},
        {"a gap at the top of a page does not count", {block(90), block(100, 50)}, 100, 100, {0, 1}},
        {"three pages", {block(60), block(60), block(60)}, 100, 100, {0, 1, 2}},
        {"a heading moves with the next", {block(50), heading(20), block(40)}, 100, 100, {0, 1}},
        {"a heading that fits with the next stays", {block(40), heading(20), block(40)}, 100, 100, {0}},
        {"two headings in a row move together", {block(50), heading(20), heading(20), block(20)}, 100, 100, {0, 1}},
        {"a heading whose next can never fit with it stays", {block(50), heading(30), block(90)}, 100, 100, {0, 2}},
        {"a heading with a longer train than a page stays with the next of it",
         {block(70), heading(20), heading(30), block(90)},
         100,
         100,
         {0, 1, 3}},
        {"a heading at the very end", {block(50), heading(30)}, 100, 100, {0}},
        {"a block higher than a page has one of its own", {block(10), block(300), block(10)}, 100, 100, {0, 1, 2}},
        {"a block higher than a page comes first", {block(300), block(10)}, 100, 100, {0, 1}},
        {"a smaller first page", {block(40), block(40), block(40)}, 50, 100, {0, 1}},
        {"a larger first page", {block(40), block(40), block(40), block(40)}, 100, 50, {0, 2, 3}},
        {"a first page with room for nothing still gets the first block", {block(40), block(40)}, 0, 100, {0, 1}},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto pages = ui::deal_pages(c.blocks, c.first, c.others, 0);
        CHECK(pages.starts == c.starts);
        CHECK(pages.paging.pages == static_cast<int>(c.starts.size()));
    }
}

TEST_CASE("pages: a short last block takes with it what comes before it, where the page before keeps enough")
{
    struct Case {
        std::string why;
        std::vector<ui::Block> blocks;
        Starts starts;
    };
    const Case cases[] = {
        {"the one before comes along", {block(30), block(30), block(40), block(10)}, {0, 2}},
        {"with its heading", {block(20), block(20), heading(20), block(40), block(10)}, {0, 2}},
        {"not where the page before would be left bare", {block(60), block(40), block(10)}, {0, 2}},
        {"not a block that fills a page well", {block(30), block(30), block(40), block(50)}, {0, 3}},
        {"not two blocks", {block(30), block(30), block(40), block(10), block(10)}, {0, 3}},
        {"not where both are too high for a page", {block(1), block(1), block(95), block(10)}, {0, 3}},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(ui::deal_pages(c.blocks, 100, 100, 0).starts == c.starts);
    }
}

TEST_CASE("pages: a heading is said again on a page that goes on with it, and takes its room there")
{
    std::vector<std::string> drawn;
    const auto named = [&](float height, const std::string& name) {
        return ui::Block{height, [&drawn, name](const ui::Area&) { drawn.push_back(name); }, false, 0};
    };
    std::vector<ui::Block> blocks{named(20, "heading"), named(40, "a"), named(40, "b"),
                                  named(40, "c"),       named(40, "d"), named(90, "high")};
    blocks[0].with_next = true;
    const auto again = std::make_shared<const ui::Block>(named(30, "again"));
    for (std::size_t i = 1; i < blocks.size(); ++i)
        blocks[i].again = again;
    CHECK(ui::deal_pages(blocks, 100, 100, 0).starts == Starts{0, 3, 4, 5});
    const ui::Area area{{0, 0}, {50, 100}};
    const std::vector<std::vector<std::string>> pages{
        {"heading", "a", "b"}, {"again", "c"}, {"again", "d"}, {"high"}}; // no room for it above the last
    for (std::size_t page = 0; page < pages.size(); ++page) {
        drawn.clear();
        ui::draw_page(blocks, area, static_cast<int>(page));
        CHECK(drawn == pages[page]);
    }
}

TEST_CASE("pages: a page outside is the nearest one there is")
{
    const std::vector<ui::Block> blocks{block(60), block(60), block(60)};
    for (const auto& [asked, shown] : {std::pair{-3, 0}, {0, 0}, {1, 1}, {2, 2}, {3, 2}, {99, 2}}) {
        const auto& told_asked = asked;
        CAPTURE(told_asked);
        CHECK(ui::deal_pages(blocks, 100, 100, asked).paging.page == shown);
    }
}

TEST_CASE("pages: a page draws its own blocks below each other, and each block is on one page")
{
    struct Drawn {
        int block;
        float top;
        float bottom;
    };
    std::vector<Drawn> drawn;
    std::vector<ui::Block> blocks;
    for (int i = 0; i < 5; ++i)
        blocks.push_back({30,
                          [&drawn, i](const ui::Area& area) {
                              drawn.push_back({i, area.low.y, area.high.y});
                          },
                          false, 10});
    const ui::Area area{{0, 100}, {50, 200}};
    for (int page = 0; page < 3; ++page)
        CHECK(ui::draw_page(blocks, area, page).pages == 3);
    REQUIRE(drawn.size() == 5);
    for (int i = 0; i < 5; ++i) {
        CAPTURE(i);
        const auto& one = drawn[static_cast<std::size_t>(i)];
        CHECK(one.block == i);
        CHECK(one.top == (i % 2 == 0 ? 100 : 140));
        CHECK(one.bottom == one.top + 30);
    }
}
