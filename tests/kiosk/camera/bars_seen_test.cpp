#include "kiosk/camera/bars_seen.h"
#include "tests/support/barcode_frames.h"

#include <doctest/doctest.h>

#include <cstdint>
#include <vector>

using kiosk::bars_seen;

namespace {

test::Picture ean13(double module)
{
    return {
        .symbology = core::Symbology::Ean13, .digits = "9521234543213", .width = 1280, .height = 720, .module = module};
}

} // namespace

// 95 modules across (GS1 General Specifications, 5.2); two small squares more, for the margin.
TEST_CASE("bars seen: how large they are, at any angle")
{
    for (const double module : {1.5, 2.5, 4.0, 6.0})
        for (const double degrees : {0.0, 25.0, 90.0}) {
            CAPTURE(module);
            CAPTURE(degrees);
            auto picture = ean13(module);
            picture.degrees = degrees;
            picture.noise = 6;
            const auto seen = bars_seen(test::draw(picture).view());
            REQUIRE(seen.found);
            CHECK(seen.length > 0.75 * 95 * module);
            CHECK(seen.length < 1.2 * 95 * module + 32);
            CHECK(seen.share == doctest::Approx(seen.length / 1280));
        }
}

TEST_CASE("bars seen: how sharp they are")
{
    const auto sharp = [](double blur, double smear) {
        auto picture = ean13(3);
        picture.blur = blur;
        picture.smear = smear;
        return bars_seen(test::draw(picture).view()).sharp;
    };
    CHECK(sharp(0, 0) > 0.6);
    CHECK(sharp(1, 0) < sharp(0.5, 0));
    CHECK(sharp(2, 0) < 0.3);
    CHECK(sharp(0, 6) < 0.3);
}

TEST_CASE("bars seen: none where there are none")
{
    for (const double noise : {0.0, 6.0, 12.0})
        CHECK_FALSE(bars_seen(test::draw_empty({.noise = noise}).view()).found);
    // A white package on a dark table: edges, but no stripes.
    kiosk::Frame package = test::draw_empty({.around = 60});
    for (int y = 100; y < 300; ++y)
        for (int x = 150; x < 450; ++x)
            package.pixels[static_cast<std::size_t>(y) * 640 + static_cast<std::size_t>(x)] = 220;
    CHECK_FALSE(bars_seen(package.view()).found);
    // Print: small marks that run in all directions.
    std::uint32_t random = 1;
    for (int y = 100; y < 300; y += 6)
        for (int x = 150; x < 450; x += 6) {
            random = random * 1664525 + 1013904223;
            for (int i = 0; i < 5; ++i) {
                const bool upright = (random >> 20) % 2 == 0;
                const int at = (y + (upright ? i : 2)) * 640 + x + (upright ? 2 : i);
                package.pixels[static_cast<std::size_t>(at)] = 30;
            }
        }
    CHECK_FALSE(bars_seen(package.view()).found);
}

TEST_CASE("bars seen: any picture is safe")
{
    CHECK_FALSE(bars_seen({}).found);
    const std::vector<std::uint8_t> pixels(40 * 40, 7);
    for (const int width : {1, 31, 32, 33, 40})
        for (const int height : {1, 32, 33, 40})
            CHECK_FALSE(bars_seen({pixels.data(), width, height, width}).found);
}
