#include "tests/support/headless.h"
#include "tests/ui/samples.h"
#include "ui/widgets/grey_picture.h"

#include <doctest/doctest.h>

#include <algorithm>

namespace {

/// What a frame has drawn with this picture in it: corners and triangles.
struct Drawn {
    int corners = 0;
    int triangles = 0;
};

Drawn drawn(test::Headless& screen, const ui::GreyPicture& view)
{
    screen.frame([&](const ui::Ui&, ui::Actions&) { ui::grey_picture(view, {{10, 10}, {170, 100}}); });
    const ImDrawData& data = *ImGui::GetDrawData();
    return {data.TotalVtxCount, data.TotalIdxCount / 3};
}

} // namespace

TEST_CASE("grey picture: each pixel is a corner of the net")
{
    test::Headless screen;
    (void)drawn(screen,
                test::camera_view("", 2, 2).whole); // a window's first picture has less of its own in newer libraries
    const Drawn least =
        drawn(screen, test::camera_view("", 2, 2).whole); // two triangles, and whatever a window has itself
    const Drawn small = drawn(screen, test::camera_view("", 16, 9).whole);
    CHECK(small.corners - least.corners == 16 * 9 - 4);
    CHECK(small.triangles - least.triangles == 2 * 15 * 8 - 2);
    const Drawn largest = drawn(screen, test::camera_view("", 160, 90).whole);
    CHECK(largest.corners - least.corners == ui::GreyPicture::most_pixels - 4);
}

TEST_CASE("grey picture: its pixels stand where they belong")
{
    test::Headless screen;
    auto view = test::camera_view("", 3, 2).whole;
    view.grey = std::make_shared<const std::vector<std::uint8_t>>(std::vector<std::uint8_t>{1, 2, 3, 4, 5, 6});
    drawn(screen, view);
    const ImDrawList& list = *ImGui::GetDrawData()->CmdLists[0];
    const auto corner = std::find_if(list.VtxBuffer.begin(), list.VtxBuffer.end(),
                                     [](const ImDrawVert& v) { return v.col == IM_COL32(6, 6, 6, 255); });
    REQUIRE(corner != list.VtxBuffer.end());
    CHECK(corner->pos.x == 170);
    CHECK(corner->pos.y == 100);
    CHECK((corner - 5)->col == IM_COL32(1, 1, 1, 255));
    CHECK((corner - 5)->pos.x == 10);
}

TEST_CASE("grey picture: what is no picture is not drawn")
{
    test::Headless screen;
    const int nothing = drawn(screen, {}).corners;
    auto torn = test::camera_view("", 16, 9).whole;
    torn.height = 10; // more rows than bytes
    auto huge = test::camera_view("", 200, 90).whole;
    for (const auto& view : {torn, huge, test::camera_view("", 1, 9).whole, test::camera_view("", 16, 0).whole}) {
        CHECK_FALSE(view.can_be_drawn());
        CHECK(drawn(screen, view).corners == nothing);
    }
}

TEST_CASE("grey picture: keeps its shape in any room")
{
    const auto in = [](int width, int height, float room_width, float room_height) {
        return ui::picture_area(test::camera_view("", width, height).whole, {{0, 0}, {room_width, room_height}});
    };
    CHECK(in(160, 90, 320, 400).width() == 320);
    CHECK(in(160, 90, 320, 400).height() == 180);
    CHECK(in(90, 160, 320, 160).width() == 90);
    CHECK(in(90, 160, 320, 160).low.x == 115); // in the middle
}
