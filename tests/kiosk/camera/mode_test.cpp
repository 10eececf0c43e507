#include "kiosk/camera/mode.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <vector>

using kiosk::best_mode;
using kiosk::Mode;

// Rule: the "enough pixels before more frames a second"; the limits are common practice.
TEST_CASE("mode: enough pixels come before more frames a second")
{
    struct Case {
        const char* why;
        std::vector<Mode> modes;
        Mode best;
    };
    const Case cases[] = {
        {"1280 x 720 before more frames", {{"", 640, 480, 60}, {"", 1280, 720, 15}}, {"", 1280, 720, 15}},
        {"of those with enough, more frames", {{"YUY2", 1280, 720, 10}, {"", 1280, 720, 30}}, {"", 1280, 720, 30}},
        {"more than 30 are no better", {{"", 1920, 1080, 60}, {"", 1280, 720, 30}}, {"", 1280, 720, 30}},
        {"30000 in 1001 seconds are fewer than 30",
         {{"", 1280, 720, 30000, 1001}, {"", 1920, 1080, 30}},
         {"", 1920, 1080, 30}},
        {"the smallest that has enough", {{"", 1920, 1080, 30}, {"", 1280, 960, 30}}, {"", 1280, 960, 30}},
        {"without JPEG, all else the same", {{"", 1280, 720, 30}, {"YUY2", 1280, 720, 30}}, {"YUY2", 1280, 720, 30}},
        {"upright is as good", {{"", 720, 1280, 30}, {"", 800, 600, 30}}, {"", 720, 1280, 30}},
        {"ten a second at least", {{"YUY2", 1280, 720, 9}, {"", 640, 480, 30}}, {"", 640, 480, 30}},
        {"ten a second will do", {{"YUY2", 1280, 720, 10}, {"", 640, 480, 30}}, {"YUY2", 1280, 720, 10}},
        {"7.5 a second will not", {{"YUY2", 1280, 720, 15, 2}, {"", 640, 480, 30}}, {"", 640, 480, 30}},
        {"not larger than needed", {{"", 3840, 2160, 30}, {"", 1920, 1200, 20}}, {"", 1920, 1200, 20}},
        {"larger before too small", {{"", 640, 480, 30}, {"", 2592, 1944, 15}}, {"", 2592, 1944, 15}},
        {"the largest of the small", {{"", 640, 480, 30}, {"", 800, 600, 15}}, {"", 800, 600, 15}},
        {"the largest of the slow", {{"", 640, 480, 5}, {"", 1600, 1200, 2}}, {"", 1600, 1200, 2}},
        {"a driver that tells no pace is believed", {{"", 640, 480, 30}, {"", 1280, 720, 0}}, {"", 1280, 720, 0}},
    };
    for (auto c : cases) {
        CAPTURE(c.why);
        CHECK(best_mode(c.modes) == c.best);
        std::ranges::reverse(c.modes);
        CHECK(best_mode(c.modes) == c.best); // whatever the driver names first
    }
    CHECK_FALSE(best_mode({}));
}

TEST_CASE("mode: as caps")
{
    CHECK(kiosk::caps_of({"", 1280, 720, 30}) == "image/jpeg,width=1280,height=720,framerate=30/1");
    CHECK(kiosk::caps_of({"YUY2", 640, 480, 15, 2}) == "video/x-raw,format=YUY2,width=640,height=480,framerate=15/2");
    CHECK(kiosk::caps_of({"GRAY8", 640, 480, 0}) == "video/x-raw,format=GRAY8,width=640,height=480");
}
