#include "kiosk/camera/small_picture.h"

#include <doctest/doctest.h>

#include <cstdint>
#include <vector>

using kiosk::small_picture;

TEST_CASE("small picture: keeps its shape and no more pixels than asked for")
{
    const std::vector<std::uint8_t> pixels(std::size_t{1920} * 1080, 99);
    struct Case {
        int width, height, small_width, small_height;
    };
    const Case cases[] = {{1280, 720, 160, 90},  {640, 480, 138, 103}, {720, 1280, 90, 160},
                          {1920, 1080, 160, 90}, {100, 50, 100, 50},   {1920, 1, 1920, 1}};
    for (const auto& c : cases) {
        CAPTURE(c.width);
        const auto small = small_picture({pixels.data(), c.width, c.height, c.width}, 14'400, false);
        CHECK(small.width == c.small_width);
        CHECK(small.height == c.small_height);
        CHECK(small.width * small.height <= 14'400);
        CHECK(small.pixels == std::vector<std::uint8_t>(small.pixels.size(), 99));
    }
    CHECK(small_picture({}, 14'400, false).pixels.empty());
    CHECK(small_picture({pixels.data(), 100, 100, 100}, 0, false).pixels.empty());
}

TEST_CASE("small picture: pixels are means, and a mirror swaps left and right")
{
    const std::vector<std::uint8_t> pixels{10, 20, 90, 90, /**/ 30, 40, 90, 90, /**/ 0, 0, 50, 50, /**/ 0, 0, 50, 50};
    const kiosk::GreyView view{pixels.data(), 4, 4, 4};
    CHECK(small_picture(view, 4, false).pixels == std::vector<std::uint8_t>{25, 90, 0, 50});
    CHECK(small_picture(view, 4, true).pixels == std::vector<std::uint8_t>{90, 25, 50, 0});
}

TEST_CASE("middle: the pixels of the picture as they are, in its shape, swapped as in a mirror")
{
    std::vector<std::uint8_t> pixels;
    for (int y = 0; y < 40; ++y)
        for (int x = 0; x < 80; ++x)
            pixels.push_back(static_cast<std::uint8_t>(x + y));
    const kiosk::GreyView view{pixels.data(), 80, 40, 80};
    const auto middle = kiosk::middle_of(view, 50, false);
    REQUIRE(middle.width == 10);
    REQUIRE(middle.height == 5);
    CHECK(middle.pixels.front() == 35 + 17);
    CHECK(middle.pixels[1] == 36 + 17);
    CHECK(middle.pixels.back() == 44 + 21);
    CHECK(kiosk::middle_of(view, 50, true).pixels.front() == 44 + 17);
    CHECK(kiosk::middle_of(view, 80 * 40, false).pixels == pixels); // all of it has room
    CHECK(kiosk::middle_of({}, 50, false).pixels.empty());
    CHECK(kiosk::middle_of({pixels.data(), 80, 40, 80}, 0, false).pixels.empty());
}
