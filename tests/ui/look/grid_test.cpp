#include "ui/look/grid.h"

#include <doctest/doctest.h>

namespace {

bool same(const ui::Area& area, float left, float top, float right, float bottom)
{
    return area.low.x == left && area.low.y == top && area.high.x == right && area.high.y == bottom;
}

} // namespace

TEST_CASE("grid: strips are cut off each edge and the rest is kept")
{
    const ui::Area whole{{10, 20}, {110, 220}};
    ui::Area rest = whole;
    CHECK(same(rest.cut_top(30), 10, 20, 110, 50));
    CHECK(same(rest.cut_bottom(40), 10, 180, 110, 220));
    CHECK(same(rest.cut_left(15), 10, 50, 25, 180));
    CHECK(same(rest.cut_right(25), 85, 50, 110, 180));
    CHECK(same(rest, 25, 50, 85, 180));
    CHECK(same(whole.inset(5), 15, 25, 105, 215));
    CHECK(same(whole.inset(5, 10), 15, 30, 105, 210));
    CHECK(whole.width() == 100);
    CHECK(whole.height() == 200);
}

TEST_CASE("grid: a strip larger than the area takes all of it and leaves nothing behind")
{
    ui::Area rest{{0, 0}, {10, 10}};
    CHECK(same(rest.cut_top(99), 0, 0, 10, 10));
    CHECK(rest.height() == 0);
    rest = {{0, 0}, {10, 10}};
    CHECK(same(rest.cut_right(99), 0, 0, 10, 10));
    CHECK(rest.width() == 0);
}
