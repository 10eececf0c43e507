// The ring of the focus, looked at as a picture's rectangles: as thick as asked for, and never off the glass.
#include "tests/support/headless.h"
#include "tests/ui/in_window.h"
#include "ui/access/lit.h"
#include "ui/widgets/text.h"

#include <doctest/doctest.h>

#include <algorithm>

namespace {

/// The bounds of everything that a drawing put onto the screen.
struct Bounds {
    ImVec2 low{1e9F, 1e9F};
    ImVec2 high{-1e9F, -1e9F};
};

Bounds bounds_of(test::Headless& screen, ImVec2 low, ImVec2 high)
{
    Bounds bounds;
    test::in_window(screen, [&](const ui::Ui& ui) {
        const int before = ui::canvas().VtxBuffer.Size;
        ui::ring(ui, low, high);
        for (int i = before; i < ui::canvas().VtxBuffer.Size; ++i) {
            const ImVec2 at = ui::canvas().VtxBuffer[i].pos;
            bounds.low = {std::min(bounds.low.x, at.x), std::min(bounds.low.y, at.y)};
            bounds.high = {std::max(bounds.high.x, at.x), std::max(bounds.high.y, at.y)};
        }
    });
    return bounds;
}

} // namespace

TEST_CASE("ring: lies round a thing, and inside the glass where the thing fills it")
{
    test::Headless screen;
    const auto free = bounds_of(screen, {100, 100}, {300, 160});
    CHECK(free.low.x < 98);
    CHECK(free.high.x > 302);
    CHECK(free.low.x > 88);
    const auto full = bounds_of(screen, {0, 0}, {1280, 800});
    CHECK(full.low.x >= 0);
    CHECK(full.low.y >= 0);
    CHECK(full.high.x <= 1280);
    CHECK(full.high.y <= 800);
}
