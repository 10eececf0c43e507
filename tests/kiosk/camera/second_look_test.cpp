#include "kiosk/camera/second_look.h"
#include "kiosk/camera/zxing_compat.h"
#include "tests/support/barcode_frames.h"

#include <doctest/doctest.h>

#include <algorithm>

using kiosk::Frame;

namespace {

Frame flat(int width, int height, int grey)
{
    Frame frame;
    frame.width = width;
    frame.height = height;
    frame.pixels.assign(static_cast<std::size_t>(width * height), static_cast<std::uint8_t>(grey));
    return frame;
}

} // namespace

TEST_CASE("second look: what is flat stays as it is, a quarter as high and twice as wide")
{
    for (const int grey : {0, 1, 128, 255}) {
        CAPTURE(grey);
        const Frame made = kiosk::second_look(flat(21, 11, grey).view());
        CHECK(made.width == 42);
        CHECK(made.height == 2); // the last three rows have no fourth
        CHECK(std::ranges::all_of(made.pixels, [grey](int pixel) { return pixel == grey; }));
    }
    CHECK(kiosk::second_look(flat(21, 7, 128).view()).pixels.empty());
}

TEST_CASE("second look: an edge gets steeper, and a grain in one row a quarter as large")
{
    Frame edge = flat(40, 8, 100);
    for (std::size_t i = 0; i < edge.pixels.size(); ++i)
        if (i % 40 >= 20)
            edge.pixels[i] = 140;
    const Frame steeper = kiosk::second_look(edge.view());
    CHECK(steeper.pixels[38] < 100);
    CHECK(steeper.pixels[40] > 140);
    CHECK(steeper.pixels[2] == 100); // far from the edge nothing changes
    CHECK(steeper.pixels[77] == 140);

    Frame grain = flat(40, 8, 100);
    grain.pixels[20] = 140;
    // 40 in one row of four is 10; pushed away from a mean that is 2 higher than 100 (20 of 110), that is 110 + 2 x 8.
    CHECK(kiosk::second_look(grain.view()).pixels[40] == 126);
}

TEST_CASE("second look: reads what a single look does not")
{
    const Frame blurred = test::draw({.digits = "9521234543213", .module = 2.5, .blur = 1, .noise = 2});
    CHECK_FALSE(kiosk::zxing_read(blurred.view()));
    const auto reading = kiosk::zxing_read(kiosk::second_look(blurred.view()).view());
    REQUIRE(reading);
    CHECK(reading->text == "9521234543213");
}

TEST_CASE("laid down: columns become rows")
{
    Frame picture = flat(70, 41, 0); // more than one tile each way, and none of them whole
    for (std::size_t i = 0; i < picture.pixels.size(); ++i)
        picture.pixels[i] = static_cast<std::uint8_t>(i % 251);
    const Frame laid = kiosk::laid_down(picture.view());
    CHECK(laid.width == 41);
    CHECK(laid.height == 70);
    bool same = true;
    for (std::size_t x = 0; x < 70; ++x)
        for (std::size_t y = 0; y < 41; ++y)
            same = same && laid.pixels[x * 41 + y] == picture.pixels[y * 70 + x];
    CHECK(same);
}
