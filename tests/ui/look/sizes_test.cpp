#include "ui/look/sizes.h"

#include <doctest/doctest.h>

#include <iterator>

namespace {

struct Window {
    float width;
    float height;
};
// The three that every screen must fit, and what else may be plugged in.
constexpr Window windows[] = {{1280, 800}, {1920, 1080}, {800, 1280}, {1024, 768}, {800, 480}, {3840, 2160}};

} // namespace

TEST_CASE("sizes: five letter sizes at 1280x800 and 100 %, each about a step of 1.25")
{
    const auto sizes = ui::sizes_for(1280, 800, 100);
    CHECK(sizes.note == 24);
    CHECK(sizes.bar == 24);
    CHECK(sizes.text == 30);
    CHECK(sizes.name == 38);
    CHECK(sizes.figure == 47);
    CHECK(sizes.headline == 59);
    CHECK(sizes.target == 64);
    CHECK(sizes.text / sizes.note == doctest::Approx(1.25).epsilon(0.03));
    CHECK(sizes.name / sizes.text == doctest::Approx(1.25).epsilon(0.03));
    CHECK(sizes.figure / sizes.name == doctest::Approx(1.25).epsilon(0.03));
    CHECK(sizes.headline / sizes.figure == doctest::Approx(1.25).epsilon(0.03));
}

TEST_CASE("sizes: nothing is under 24 px, and what is touched never under 64 px, in any window")
{
    for (const auto& window : windows)
        for (const int percent : ui::text_percents) {
            CAPTURE(window.width);
            CAPTURE(percent);
            const auto sizes = ui::sizes_for(window.width, window.height, percent);
            for (const float letters : {sizes.note, sizes.bar, sizes.text, sizes.name, sizes.figure, sizes.headline})
                CHECK(letters >= 24);
            CHECK(sizes.target >= 64);
            CHECK(sizes.line >= 1);
            CHECK(sizes.note <= sizes.text);
            CHECK(sizes.text <= sizes.name);
            CHECK(sizes.text <= sizes.figure);
            CHECK(sizes.width == window.width);
            CHECK(sizes.height == window.height);
        }
}

TEST_CASE("sizes: a larger text size makes no letter smaller, and the text at 200 % is twice that at 100 %")
{
    for (const auto& window : windows) {
        CAPTURE(window.width);
        auto before = ui::sizes_for(window.width, window.height, 100);
        for (const int percent : ui::text_percents) {
            CAPTURE(percent);
            const auto now = ui::sizes_for(window.width, window.height, percent);
            CHECK(now.note >= before.note);
            CHECK(now.bar >= before.bar);
            CHECK(now.text >= before.text);
            CHECK(now.name >= before.name);
            CHECK(now.figure >= before.figure);
            CHECK(now.headline >= before.headline);
            before = now;
        }
        const auto once = ui::sizes_for(window.width, window.height, 100);
        const auto twice = ui::sizes_for(window.width, window.height, 200);
        CHECK(twice.note == doctest::Approx(2 * once.note).epsilon(0.02));
        CHECK(twice.text == doctest::Approx(2 * once.text).epsilon(0.02));
    }
}

TEST_CASE("sizes: a larger window grows everything, upright as well")
{
    const auto small = ui::sizes_for(1280, 800, 100);
    const auto large = ui::sizes_for(1920, 1080, 100);
    CHECK(large.text > small.text);
    CHECK(large.target > small.target);
    CHECK(large.unit > small.unit);
    CHECK(ui::sizes_for(1080, 1920, 100).text == large.text);
    CHECK(ui::sizes_for(800, 1280, 100).upright());
    CHECK(!small.upright());
}

TEST_CASE("sizes: the text sizes come one after the other, and after the largest the smallest")
{
    int percent = 100;
    for (const int next : {150, 200, 300, 100}) {
        percent = ui::next_text_percent(percent);
        CHECK(percent == next);
    }
    CHECK(ui::next_text_percent(125) == 150); // from a setting of another day
    CHECK(std::size(ui::text_percents) == 4);
}

// Sources: EN 301 549 V3.2.1, 5.1.4 (angle = 180 x height / (pi x distance), at least 0.7 degrees); 36 CFR 1194,
// Appendix C, 402.4 (3/16 in, 4.8 mm).
TEST_CASE("sizes: on measured glass no capital is lower than 0.7 degrees at the reader's distance")
{
    constexpr double pi = 3.14159265358979;
    struct Panel {
        float width;
        float height;
        float px_per_mm;
        int distance_mm;
    };
    const Panel panels[] = {{1280, 800, 5.93F, 500},  {1920, 1080, 4.03F, 500}, {800, 1280, 5.93F, 500},
                            {1920, 1080, 5.58F, 600}, {3840, 2160, 8.07F, 500}, {1280, 800, 5.93F, 300}};
    for (const auto& panel : panels) {
        CAPTURE(panel.width);
        CAPTURE(panel.px_per_mm);
        const auto sizes = ui::sizes_for({panel.width, panel.height, panel.px_per_mm, panel.distance_mm}, 100);
        for (const float em : {sizes.note, sizes.bar, sizes.text, sizes.name, sizes.figure, sizes.headline}) {
            const double capital = (em + 0.5) * ui::capital_per_em / panel.px_per_mm; // rounded to whole pixels
            CHECK(180 * capital / (pi * panel.distance_mm) >= 0.7);
            CHECK(capital >= 4.8);
        }
        CHECK(sizes.target / panel.px_per_mm >= 14.9); // 15 mm, to whole pixels
    }
}

TEST_CASE("sizes: for a group every letter of the content is at least 1/200 of its distance")
{
    for (const int distance : {2000, 2500, 3000}) {
        const auto sizes = ui::sizes_for({1920, 1080, 4.03F, 500, distance}, 100);
        for (const float em : {sizes.note, sizes.text, sizes.name, sizes.figure, sizes.headline})
            CHECK(em * ui::capital_per_em / 4.03F >= static_cast<float>(distance) / 200);
    }
}

TEST_CASE("sizes: for a group glass that is too narrow shows letters that its longest word fits")
{
    const ui::Glass narrow{800, 1280, 5.93F, 500, 2500}; // 10.1 inches, upright: 135 mm
    const auto sizes = ui::sizes_for(narrow, 100);
    CHECK(sizes.text * 9.2F <= 800 - 2 * sizes.margin);
    CHECK(sizes.text > ui::sizes_for({800, 1280, 5.93F, 500, 0}, 100).text);
    CHECK(sizes.text * ui::capital_per_em / 5.93F >= 8); // a group at 1.6 m
}
