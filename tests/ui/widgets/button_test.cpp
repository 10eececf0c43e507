#include "tests/support/mouse_compat.h"
#include "tests/ui/in_window.h"
#include "ui/widgets/button.h"

#include <doctest/doctest.h>

#include <cfloat>
#include <vector>

namespace {

using ui::TextId;

const ui::Area upper{{100, 100}, {400, 164}};
const ui::Area lower{{100, 200}, {400, 264}};
const ImVec2 on_upper{250, 130};
const ImVec2 on_lower{250, 230};
const ImVec2 elsewhere{900, 700};

/// Two buttons with the same words; which of them acted in this frame.
class TwoEqual {
public:
    /// Dear ImGui 1.90 forgets what is pressed in the second frame that a window has ever had; the station has drawn
    /// three before anybody can touch it.
    TwoEqual()
    {
        for (int settling = 0; settling < 2; ++settling)
            at({-FLT_MAX, -FLT_MAX}, false);
    }

    std::vector<int> at(ImVec2 finger, bool down)
    {
        test::put_finger(finger, down);
        std::vector<int> acted;
        test::in_window(screen_, [&acted](const ui::Ui& ui) {
            for (const int i : {0, 1}) {
                ImGui::PushID(i);
                if (ui::button(ui, TextId::button_keep, i == 0 ? upper : lower))
                    acted.push_back(i);
                ImGui::PopID();
            }
        });
        return acted;
    }

    const test::Headless& screen() const { return screen_; }

private:
    test::Headless screen_;
};

using Acted = std::vector<int>;

} // namespace

TEST_CASE("button: acts once, when the finger lifts on it, and not before")
{
    TwoEqual buttons;
    CHECK(buttons.at(on_upper, false) == Acted{});
    CHECK(buttons.at(on_upper, true) == Acted{});
    CHECK(buttons.at(on_upper, true) == Acted{});
    CHECK(buttons.at(on_upper, false) == Acted{0});
    CHECK(buttons.at(on_upper, false) == Acted{});
}

TEST_CASE("button: of two with the same words only the touched one acts")
{
    TwoEqual buttons;
    buttons.at(on_lower, false);
    buttons.at(on_lower, true);
    CHECK(buttons.at(on_lower, false) == Acted{1});
    buttons.at(on_upper, false);
    buttons.at(on_upper, true);
    CHECK(buttons.at(on_upper, false) == Acted{0});
}

TEST_CASE("button: a finger that slides off before it lifts asks for nothing")
{
    TwoEqual buttons;
    buttons.at(on_upper, false);
    buttons.at(on_upper, true);
    CHECK(buttons.at(elsewhere, true) == Acted{});
    CHECK(buttons.at(elsewhere, false) == Acted{});
    buttons.at(on_upper, false);
    buttons.at(on_upper, true);
    buttons.at(on_lower, true);
    CHECK(buttons.at(on_lower, false) == Acted{});
}

TEST_CASE("button: a finger that comes down elsewhere and slides on asks for nothing")
{
    TwoEqual buttons;
    buttons.at(elsewhere, false);
    buttons.at(elsewhere, true);
    buttons.at(on_upper, true);
    CHECK(buttons.at(on_upper, false) == Acted{});
}

TEST_CASE("button: is noted with its words, its name and all of its area")
{
    TwoEqual buttons;
    buttons.at({-FLT_MAX, -FLT_MAX}, false);
    const auto& notes = buttons.screen().notes();
    REQUIRE(notes.size() == 2);
    CHECK(notes[0].words == "Keep this");
    CHECK(notes[0].id == TextId::button_keep);
    CHECK(notes[0].role == ui::Role::Button);
    CHECK(notes[0].touchable);
    CHECK(notes[0].low.y == upper.low.y);
    CHECK(notes[1].high.y == lower.high.y);
    CHECK(notes[1].letter_px == 24);
    CHECK(!notes[1].cut);
}

TEST_CASE("button: is as large as its words want, and never smaller than a finger")
{
    test::Headless screen;
    test::in_window(screen, [](const ui::Ui& ui) {
        CHECK(ui::button_width(ui, "") >= ui.look.sizes.target);
        CHECK(ui::button_width(ui, "Start over") > ui::text_width(ui, "Start over", ui::Style::Note));
        const float one_line = ui::button_height(ui, "Start over", ui::Style::Note, 400);
        CHECK(one_line >= ui.look.sizes.target);
        CHECK(ui::button_height(ui, "Start over again and again", ui::Style::Note, 160) > one_line);
    });
}

TEST_CASE("button: says of itself when its words do not fit")
{
    test::Headless screen;
    test::in_window(screen, [](const ui::Ui& ui) {
        ui::button(ui, "Incomprehensibilities", std::nullopt, {{0, 0}, {100, 64}});
        ui::button(ui, "many words in too few lines for it", std::nullopt, {{0, 100}, {200, 164}});
        ui::button(ui, "fits", std::nullopt, {{0, 200}, {200, 264}});
    });
    REQUIRE(screen.notes().size() == 3);
    CHECK(screen.notes()[0].cut);
    CHECK(screen.notes()[1].cut);
    CHECK(!screen.notes()[2].cut);
}
