#include "kiosk/camera/regions.h"
#include "tests/support/barcode_frames.h"

#include <doctest/doctest.h>

#include <cmath>
#include <numbers>

namespace {

/// The angle between two directions across bars, which have no head: in degrees, at most 90.
double apart(double radians, double degrees)
{
    return std::abs(std::remainder(radians * 180 / std::numbers::pi - degrees, 180));
}

} // namespace

TEST_CASE("regions: a code is found where it is, at the angle at which it lies")
{
    for (const double degrees : {0.0, 20.0, 45.0, 70.0, 90.0, 135.0}) {
        CAPTURE(degrees);
        const auto frame = test::draw({.digits = "9521234543213", .module = 2, .degrees = degrees, .noise = 5});
        const auto found = kiosk::find_bars(frame.view());
        REQUIRE(!found.empty());
        CHECK(std::hypot(found[0].x - 320, found[0].y - 240) < 20);
        CHECK(apart(found[0].angle, degrees) < 8); // straighten looks closer
        CHECK(found[0].across > 95 * 2 * 0.85);
        CHECK(found[0].across < 95 * 2 * 1.3);
        CHECK(found[0].along > 60 * 2 * 0.6);
    }
}

TEST_CASE("regions: grey and grain have none")
{
    CHECK(kiosk::find_bars(test::draw_empty({}).view()).empty());
    CHECK(kiosk::find_bars(test::draw_empty({.noise = 20}).view()).empty());
}

TEST_CASE("regions: a picture too small to hold a code has none, and no more are given than asked for")
{
    const auto frame = test::draw({.digits = "9521234543213", .module = 2});
    CHECK(kiosk::find_bars({frame.pixels.data(), 40, 40, 640}).empty());
    CHECK(kiosk::find_bars(frame.view(), 1).size() == 1);
    CHECK(kiosk::find_bars(frame.view(), 0).empty());
}
