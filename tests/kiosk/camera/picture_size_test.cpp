#include "kiosk/camera/picture_size.h"

#include <doctest/doctest.h>

#include <string>

using kiosk::picture_size;
using kiosk::PictureSize;
using namespace std::string_literals;

namespace {

std::optional<PictureSize> size_in(const std::string& bytes)
{
    return picture_size({reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size()});
}

} // namespace

// Layouts: PNG 11.2.1; ITU-T T.81 B.2.2; GIF89a 18; BITMAPINFOHEADER; Netpbm pgm(5); RFC 9649.
TEST_CASE("picture_size: is read from the first bytes of each kind")
{
    using Kind = PictureSize::Kind;
    struct Case {
        std::string why;
        std::string bytes;
        PictureSize expected;
    };
    const Case cases[] = {
        {"PNG", "\x89PNG\r\n\x1a\n\0\0\0\x0dIHDR\0\0\x05\0\0\0\x02\xd0"s, {Kind::Png, 1280, 720}},
        {"PNG as large as they can be",
         "\x89PNG\r\n\x1a\n\0\0\0\x0dIHDR\x7f\xff\xff\xff\x7f\xff\xff\xff"s,
         {Kind::Png, 0x7FFF'FFFF, 0x7FFF'FFFF}},
        {"JPEG with a segment before the frame",
         "\xff\xd8\xff\xe0\0\x04XX\xff\xff\xc0\0\x11\x08\x02\xd0\x05\0"s,
         {Kind::Jpeg, 1280, 720}},
        {"progressive JPEG after a Huffman table",
         "\xff\xd8\xff\xc4\0\x03X\xff\xc2\0\x11\x08\x02\xd0\x05\0"s,
         {Kind::Jpeg, 1280, 720}},
        {"GIF", "GIF89a\0\x05\xd0\x02"s, {Kind::Gif, 1280, 720}},
        {"BMP", "BM" + std::string(12, '\0') + "\x28\0\0\0\0\x05\0\0\xd0\x02\0\0"s, {Kind::Bmp, 1280, 720}},
        {"BMP from the top down",
         "BM" + std::string(12, '\0') + "\x28\0\0\0\0\x05\0\0\x30\xfd\xff\xff"s,
         {Kind::Bmp, 1280, 720}},
        {"PGM", "P5\n1280 720\n255\n", {Kind::Pnm, 1280, 720}},
        {"PGM with a comment that holds figures", "P5 # 99 x 99\n1280\n# 1\n720 255\n", {Kind::Pnm, 1280, 720}},
        {"WebP with parts", "RIFF\0\0\0\0WEBPVP8X\0\0\0\0\0\0\0\0\xff\x04\0\xcf\x02\0"s, {Kind::WebP, 1280, 720}},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(size_in(c.bytes) == c.expected);
        for (std::size_t length = 0; length < c.bytes.size(); ++length) { // cut off anywhere: never a wrong step
            const auto cut = size_in(c.bytes.substr(0, length));
            CHECK((!cut || cut->kind == c.expected.kind));
        }
    }
}

TEST_CASE("picture_size: what is no picture has no size")
{
    for (const std::string& bytes : {""s, "P"s, "P7\n"s, "hello"s, "<svg xmlns=\"http://www.w3.org/2000/svg\"/>"s,
                                     "\xff\xd8\xff"s, "\xff\xd8\xff\xe0\0\0\0\0\0\0\0\0\0\0\0"s}) {
        CAPTURE(bytes);
        CHECK_FALSE(size_in(bytes));
    }
    CHECK(size_in("P5 999999999999999999999999 1 255\n")->width == 100'000'000); // counts up to a limit, never round it
}
