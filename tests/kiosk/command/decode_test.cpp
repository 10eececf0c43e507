#include "kiosk/command/decode.h"
#include "tests/support/barcode_frames.h"
#include "tests/support/temp_folder.h"

#include <SDL_image.h>
#include <doctest/doctest.h>

#include <algorithm>
#include <sstream>
#include <string>
#include <vector>

using core::Symbology;
using test::draw;

namespace {

struct Answer {
    int status;
    std::string out;
    std::string err;
};

Answer decode(const std::vector<std::string>& files)
{
    std::ostringstream out;
    std::ostringstream err;
    const int status = kiosk::decode(files, out, err);
    return {status, out.str(), err.str()};
}

/// Writes the frame in colour, as PNG or JPEG.
void write_packed(kiosk::Frame frame, const std::string& path)
{
    SDL_Surface* grey = SDL_CreateRGBSurfaceWithFormatFrom(frame.pixels.data(), frame.width, frame.height, 8,
                                                           frame.width, SDL_PIXELFORMAT_INDEX8);
    SDL_Color colors[256];
    for (int i = 0; i < 256; ++i)
        colors[i] = {static_cast<Uint8>(i), static_cast<Uint8>(i), static_cast<Uint8>(i), 255};
    SDL_SetPaletteColors(grey->format->palette, colors, 0, 256);
    SDL_Surface* color = SDL_ConvertSurfaceFormat(grey, SDL_PIXELFORMAT_RGB24, 0);
    const bool jpeg = path.ends_with(".jpg");
    CHECK((jpeg ? IMG_SaveJPG(color, path.c_str(), 90) : IMG_SavePNG(color, path.c_str())) == 0);
    SDL_FreeSurface(color);
    SDL_FreeSurface(grey);
}

} // namespace

TEST_CASE("decode: one line a file, in the order given, whatever kind of file and of bars")
{
    const test::TempFolder folder;
    write_packed(draw({.digits = "9521234543213"}), folder.file("ean13.png"));
    write_packed(draw({.symbology = Symbology::UpcA, .digits = "614141007349"}), folder.file("upca.jpg"));
    test::write_pgm(draw({.symbology = Symbology::UpcE, .digits = "01234565"}), folder.file("upce.pgm"));
    test::write_pgm(draw({.symbology = Symbology::Ean8, .digits = "01234565"}), folder.file("ean8.pgm"));
    test::write_pgm(draw({.symbology = Symbology::Itf14, .digits = "15400141288763"}), folder.file("itf.pgm"));

    const auto answer = decode({folder.file("upca.jpg"), folder.file("ean13.png"), folder.file("upce.pgm"),
                                folder.file("ean8.pgm"), folder.file("itf.pgm")});
    CHECK(answer.status == 0);
    CHECK(answer.err.empty());
    CHECK(answer.out == folder.file("upca.jpg") + "\tUPC-A\t00614141007349\n" +
                            (folder.file("ean13.png") + "\tEAN-13\t09521234543213\n") +
                            (folder.file("upce.pgm") + "\tUPC-E\t00012345000065\n") +
                            (folder.file("ean8.pgm") + "\tEAN-8\t00000001234565\n") +
                            (folder.file("itf.pgm") + "\tITF-14\t15400141288763\n"));
}

TEST_CASE("decode: what is transparent is white")
{
    const test::TempFolder folder;
    const kiosk::Frame frame = draw({.digits = "9521234543213", .ink = 0, .paper = 255});
    SDL_Surface* surface = SDL_CreateRGBSurfaceWithFormat(0, frame.width, frame.height, 32, SDL_PIXELFORMAT_RGBA32);
    for (int y = 0; y < frame.height; ++y)
        for (int x = 0; x < frame.width; ++x) { // black everywhere; only how much of it is there makes the bars
            auto* pixel = static_cast<Uint8*>(surface->pixels) + y * surface->pitch + x * 4;
            pixel[0] = pixel[1] = pixel[2] = 0;
            pixel[3] = static_cast<Uint8>(255 - frame.pixels[static_cast<std::size_t>(y * frame.width + x)]);
        }
    CHECK(IMG_SavePNG(surface, (folder.file("clear.png")).c_str()) == 0);
    SDL_FreeSurface(surface);
    CHECK(decode({folder.file("clear.png")}).out == folder.file("clear.png") + "\tEAN-13\t09521234543213\n");
}

TEST_CASE("decode: an unread picture is 1, a file that is none is 2, and the others are done all the same")
{
    const test::TempFolder folder;
    test::write_pgm(draw({.digits = "9521234543213"}), folder.file("good.pgm"));
    test::write_pgm(test::draw_empty({}), folder.file("empty.pgm"));
    folder.write("text.png", "this is no picture");
    folder.write("nothing.png", "");

    const auto unread = decode({folder.file("empty.pgm"), folder.file("good.pgm")});
    CHECK(unread.status == 1);
    CHECK(unread.err.empty());
    CHECK(unread.out ==
          folder.file("empty.pgm") + "\t-\t-\n" + (folder.file("good.pgm") + "\tEAN-13\t09521234543213\n"));

    struct Case {
        std::string why;
        std::string file;
        const char* says;
    };
    const Case cases[] = {
        {"missing", folder.file("missing.png"), "No such file"},
        {"a folder", folder.file(""), "a folder"},
        {"no picture", folder.file("text.png"), "no PNG"},
        {"no bytes", folder.file("nothing.png"), "0 bytes"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto answer = decode({c.file, folder.file("empty.pgm"), folder.file("good.pgm")});
        CHECK(answer.status == 2);
        CHECK(answer.out == c.file + "\t-\t-\n" + unread.out);
        CHECK(answer.err.starts_with("pairstand decode: " + c.file + " cannot be opened ("));
        CHECK(answer.err.find(c.says) != std::string::npos);
        CHECK(std::ranges::count(answer.err, '\n') == 1);
    }
}

TEST_CASE("decode: a small file that would unpack to more than the machine has is refused")
{
    const test::TempFolder folder;
    using namespace std::string_literals;
    folder.write("bomb.png", "\x89PNG\r\n\x1a\n\0\0\0\x0dIHDR\0\0\x7f\xff\0\0\x7f\xff\x08\x06\0\0\0"s);
    folder.write("bomb.pgm", "P5 99999 99999 255\n");
    for (const char* name : {"bomb.png", "bomb.pgm"}) {
        const auto answer = decode({folder.file(name)});
        CHECK(answer.status == 2);
        CHECK(answer.err.find("pixels") != std::string::npos);
        CHECK(answer.err.find("make it smaller") != std::string::npos);
    }
}

TEST_CASE("decode: a broken picture is refused, not half read")
{
    const test::TempFolder folder;
    write_packed(draw({.digits = "9521234543213"}), folder.file("whole.png"));
    folder.write("cut.png", test::bytes_of(folder.file("whole.png")).substr(0, 200));
    const auto answer = decode({folder.file("cut.png")});
    CHECK(answer.status == 2);
    CHECK(answer.out == folder.file("cut.png") + "\t-\t-\n");
}

TEST_CASE("decode: no file name breaks a line or a field")
{
    const auto answer = decode({"a\tb\nc\rd\\e\x1b[31m.png", "caf\u00e9.png"});
    CHECK(answer.out == "a\\tb\\nc\\rd\\\\e\\x1b[31m.png\t-\t-\ncaf\u00e9.png\t-\t-\n");
    CHECK(std::ranges::count(answer.err, '\n') == 2);
}
