#include "tests/ui/in_window.h"
#include "ui/widgets/line_5_20.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <optional>

// The three parts take a quarter, three eighths and three eighths (the project's own choice); 5 and 20 are FDA's guide
// to the percent Daily Value.
TEST_CASE("line: a percent stands where its part says, and past 100 at the end")
{
    struct Case {
        int percent;
        float at;
    };
    const Case cases[] = {
        {-1, 0},      {0, 0},        {1, 0.05F}, {5, 0.25F}, {10, 0.375F}, {12, 0.425F},
        {20, 0.625F}, {60, 0.8125F}, {100, 1},   {101, 1},   {250, 1},
    };
    for (const auto& c : cases) {
        CAPTURE(c.percent);
        CHECK(ui::place_on_line(c.percent) == doctest::Approx(c.at));
    }
    for (int percent = 1; percent <= 100; ++percent)
        CHECK(ui::place_on_line(percent) > ui::place_on_line(percent - 1));
}

TEST_CASE("line: everything that it draws stays inside its area, marks and arrows too")
{
    test::Headless screen;
    const ui::Area area{{400, 300}, {700, 360}};
    using Percent = std::optional<int>;
    for (const auto& [left, right] : {std::pair<Percent, Percent>{0, 0}, {100, 100}, {250, 250}, {std::nullopt, 5}}) {
        test::in_window(screen, [&, l = left, r = right](const ui::Ui& ui) {
            REQUIRE(ui::line_5_20_height(ui) <= area.height());
            ui::line_5_20(ui, area, l, r);
        });
        const auto corners = test::corners_drawn();
        REQUIRE(!corners.empty());
        for (const auto& corner : corners) {
            CHECK(corner.x >= area.low.x);
            CHECK(corner.x <= area.high.x);
            CHECK(corner.y >= area.low.y);
            CHECK(corner.y <= area.high.y);
        }
    }
}

TEST_CASE("line: both marks at one percent stand apart, the left one above and the right one below")
{
    test::Headless screen;
    const ui::Area area{{400, 300}, {700, 360}};
    const auto extent = [&](std::optional<int> left, std::optional<int> right) {
        test::in_window(screen, [&](const ui::Ui& ui) { ui::line_5_20(ui, area, std::nullopt, std::nullopt); });
        const std::size_t bare = test::corners_drawn().size();
        test::in_window(screen, [&](const ui::Ui& ui) { ui::line_5_20(ui, area, left, right); });
        auto corners = test::corners_drawn();
        corners.erase(corners.begin(), corners.begin() + static_cast<std::ptrdiff_t>(bare));
        REQUIRE(!corners.empty());
        return std::ranges::minmax(corners, {}, &ImVec2::y);
    };
    const auto above = extent(12, std::nullopt);
    const auto below = extent(std::nullopt, 12);
    CHECK(above.max.y < below.min.y);
}

TEST_CASE("line: the scale says 5, 20 and 100 over the ends of the parts")
{
    test::Headless screen;
    const ui::Area area{{400, 300}, {800, 340}};
    test::in_window(screen, [&](const ui::Ui& ui) { ui::line_5_20_scale(ui, area); });
    CHECK(screen.words() == "5%\n20%\n100%\n");
    for (const auto& note : screen.notes()) {
        CHECK(note.low.x >= area.low.x);
        CHECK(note.high.x <= area.high.x);
        CHECK(!note.cut);
    }
}

TEST_CASE("line: under large letters the scale leaves out 100, never 20, and no figure stands over another's tick")
{
    for (const int percent : ui::text_percents) {
        CAPTURE(percent);
        test::Headless screen({1280, 800}, percent);
        const ui::Area area{{400, 300}, {760, 400}};
        test::in_window(screen, [&](const ui::Ui& ui) { ui::line_5_20_scale(ui, area); });
        const auto words = screen.words();
        CHECK(words.starts_with("5%\n20%\n"));
        const auto middle = [](const ui::Note& note) { return (note.low.x + note.high.x) / 2; };
        const float ticks = middle(screen.notes()[1]) - middle(screen.notes()[0]);
        CHECK(ticks == doctest::Approx(0.375 * (360 - 48)).epsilon(0.03)); // 5 and 20 over the ends of their parts
    }
}
