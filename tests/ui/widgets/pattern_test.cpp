#include "tests/ui/in_window.h"
#include "ui/widgets/pattern.h"

#include <doctest/doctest.h>

#include <vector>

namespace {

const ui::Area area{{100, 100}, {140, 220}};

std::vector<ImVec2> drawn(test::Headless& screen, const std::function<void(const ui::Ui&)>& drawing)
{
    test::in_window(screen, drawing);
    return test::corners_drawn();
}

bool same_shape(const std::vector<ImVec2>& a, const std::vector<ImVec2>& b)
{
    if (a.size() != b.size())
        return false;
    for (std::size_t i = 0; i < a.size(); ++i)
        if (a[i].x != b[i].x || a[i].y != b[i].y)
            return false;
    return true;
}

} // namespace

TEST_CASE("pattern: the two sides differ in pattern and mark without any colour")
{
    test::Headless screen;
    using ui::Side;
    const auto lines = drawn(screen, [](const ui::Ui& ui) { ui::pattern(ui, Side::Left, area); });
    const auto dots = drawn(screen, [](const ui::Ui& ui) { ui::pattern(ui, Side::Right, area); });
    CHECK(!lines.empty());
    CHECK(!dots.empty());
    CHECK(!same_shape(lines, dots));
    const auto square = drawn(screen, [](const ui::Ui& ui) { ui::mark(ui, Side::Left, {120, 120}, 10); });
    const auto circle = drawn(screen, [](const ui::Ui& ui) { ui::mark(ui, Side::Right, {120, 120}, 10); });
    CHECK(square.size() == 4);
    CHECK(circle.size() > 4 * square.size());
    for (const auto& corners : {square, circle}) // edges are softened by a pixel
        for (const auto& corner : corners) {
            CHECK(corner.x >= 108);
            CHECK(corner.x <= 132);
        }
}

TEST_CASE("pattern: nothing of a pattern is seen outside its area")
{
    test::Headless screen;
    for (const ui::Side side : {ui::Side::Left, ui::Side::Right}) {
        test::in_window(screen, [side](const ui::Ui& ui) { ui::pattern(ui, side, area); });
        const ImDrawData& data = *ImGui::GetDrawData();
        for (int list = 0; list < data.CmdListsCount; ++list)
            for (const auto& command : data.CmdLists[list]->CmdBuffer) {
                if (command.ElemCount == 0)
                    continue;
                CHECK(command.ClipRect.x >= area.low.x);
                CHECK(command.ClipRect.y >= area.low.y);
                CHECK(command.ClipRect.z <= area.high.x);
                CHECK(command.ClipRect.w <= area.high.y);
            }
    }
}
