// The camera's picture on the screens that ask for a scan: there is room for it, or it gives way.
#include "tests/support/headless.h"
#include "tests/ui/samples.h"
#include "ui/parts/camera_corner.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

using ui::ScreenId;
using ui::TextId;

namespace {

ui::State with_camera(ScreenId screen, TextId hint, std::string_view code = "en")
{
    auto state = test::state_of(screen, test::language(code));
    state.code = "09521234567899";
    state.camera = test::camera_view(test::language(code).text(hint));
    return state;
}

const ui::Note* picture(const test::Headless& screen)
{
    const auto at = std::ranges::find(screen.notes(), ui::Role::Picture, &ui::Note::role);
    return at == screen.notes().end() ? nullptr : &*at;
}

} // namespace

TEST_CASE("camera corner: the picture stands at the right, and below it what to do")
{
    test::Headless screen;
    for (const auto id : {ScreenId::Welcome, ScreenId::NotFound}) {
        const auto state = with_camera(id, TextId::camera_closer);
        CHECK(ui::shows_camera(state));
        screen.frame(state);
        const auto* seen = picture(screen);
        REQUIRE(seen);
        CHECK(seen->words == "What the camera sees");
        CHECK(seen->high.x == doctest::Approx(1280 - 32));
        CHECK(seen->low.y < 40);
        CHECK((seen + 1)->words == "Closer, please.");
        CHECK((seen + 1)->low.y >= seen->high.y);
    }
    CHECK_FALSE(ui::shows_camera(with_camera(ScreenId::Pair, TextId::camera_closer)));
}

TEST_CASE("camera corner: nothing else moves when the hint changes, or when it comes from another hint")
{
    for (const std::string code : {"en", "es"})
        for (const ImVec2 size : {ImVec2{1280, 800}, ImVec2{800, 1280}, ImVec2{1920, 1080}}) {
            test::Headless screen(size, 100, code);
            screen.frame(with_camera(ScreenId::Welcome, TextId::camera_aim, code));
            const auto before = screen.notes();
            for (const auto hint : {TextId::camera_closer, TextId::camera_back, TextId::camera_hold_still,
                                    TextId::camera_turn, TextId::camera_whole}) {
                screen.frame(with_camera(ScreenId::Welcome, hint, code));
                REQUIRE(screen.notes().size() == before.size());
                REQUIRE(picture(screen));
                for (std::size_t i = 0; i < before.size(); ++i)
                    if (before[i].words == screen.notes()[i].words)
                        CHECK(before[i].low.y == screen.notes()[i].low.y);
            }
        }
}

TEST_CASE("camera corner: touches do what they do without it")
{
    test::Headless screen;
    auto state = with_camera(ScreenId::Welcome, TextId::camera_aim);
    state.by_aisle = true;
    CHECK(screen.tap(state, TextId::button_choose_by_name) == ui::Actions{ui::FindByName{}});
    CHECK(screen.tap(state, TextId::find_by_aisle) == ui::Actions{ui::ChooseAisle{}});
    CHECK(screen.tap(state, TextId::button_text_size) == ui::Actions{ui::NextTextSize{}});
    state = with_camera(ScreenId::NotFound, TextId::camera_aim);
    CHECK(screen.tap(state, TextId::button_choose_by_name) == ui::Actions{ui::FindByName{}});
}

TEST_CASE("camera corner: words come first where there is no room for both")
{
    test::Headless largest({1280, 800}, 300);
    largest.frame(with_camera(ScreenId::Welcome, TextId::camera_aim));
    CHECK(picture(largest) == nullptr);
    CHECK(largest.says("Two labels"));
    test::Headless usual;
    auto state = with_camera(ScreenId::Welcome, TextId::camera_aim);
    state.camera->whole.grey = nullptr; // no picture yet
    usual.frame(state);
    CHECK(picture(usual) == nullptr);
}
