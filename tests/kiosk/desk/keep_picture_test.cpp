#include "kiosk/camera/picture_file.h"
#include "kiosk/desk/keep_picture.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <string>

namespace {

kiosk::Frame ramp()
{
    kiosk::Frame frame;
    frame.width = 7;
    frame.height = 5;
    for (int i = 0; i < 35; ++i)
        frame.pixels.push_back(static_cast<std::uint8_t>(7 * i));
    return frame;
}

} // namespace

TEST_CASE("keep picture: what is written is read again, pixel for pixel, and nothing is written over")
{
    const test::TempFolder folder;
    for (const int number : {1, 2, 3}) {
        const auto kept = kiosk::keep_picture(ramp(), folder.file(""));
        REQUIRE(kept);
        CHECK(*kept == folder.file("pairstand-picture-" + std::to_string(number) + ".png"));
        const auto back = kiosk::load_picture(kept->string());
        REQUIRE(back);
        CHECK(back->width == 7);
        CHECK(back->height == 5);
        CHECK(back->pixels == ramp().pixels);
    }
}

TEST_CASE("keep picture: a folder that is not there, and a picture that is none")
{
    const test::TempFolder folder;
    const auto gone = kiosk::keep_picture(ramp(), folder.file("stick"));
    REQUIRE_FALSE(gone);
    CHECK(gone.error().kind == core::Error::Kind::CannotWrite);
    kiosk::Frame torn = ramp();
    torn.pixels.pop_back();
    CHECK_FALSE(kiosk::keep_picture(torn, folder.file("")));
    CHECK(std::filesystem::is_empty(folder.file("")));
}
