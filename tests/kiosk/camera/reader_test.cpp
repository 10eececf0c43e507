#include "kiosk/camera/reader.h"
#include "tests/support/barcode_frames.h"

#include <doctest/doctest.h>

using core::Symbology;
using kiosk::Reading;
using test::Picture;

namespace {

constexpr Symbology kinds[] = {Symbology::Ean13, Symbology::UpcA, Symbology::UpcE, Symbology::Ean8, Symbology::Itf14};

struct Counts {
    int read = 0;
    int misread = 0;
};

/// Reads some numbers of one kind, all drawn with the same flaws.
Counts try_numbers(Picture picture, Symbology kind, int numbers)
{
    Counts counts;
    picture.symbology = kind;
    for (int i = 0; i < numbers; ++i) {
        picture.seed = static_cast<std::uint64_t>(i) + 1;
        picture.digits = test::some_digits(kind, picture.seed);
        const auto reading = kiosk::read(test::draw(picture).view());
        if (reading == Reading{picture.digits, kind})
            ++counts.read;
        else if (reading)
            ++counts.misread;
    }
    return counts;
}

} // namespace

// What we promise of the camera, drawn in frames of 640 x 480. Levels are ours; no source.
TEST_CASE("reader: what must be read is read, and nothing is ever read wrong")
{
    struct Level {
        std::string why;
        Picture flaws;
        int must_read; ///< so many of three numbers, of each kind of bars that shapes read
        int of_itf;    ///< of ITF-14, which the library alone reads
    };
    const Level levels[] = {
        {"clean", {}, 3, 3},
        {"bars of two pixels", {.module = 2}, 3, 3},
        {"bars of one and a half pixels", {.module = 1.5}, 3, 3},
        {"turned a little", {.degrees = 12}, 3, 3},
        {"turned more than that", {.module = 2.5, .degrees = 30}, 3, 0},
        {"half way to upright", {.module = 2.5, .degrees = 45}, 3, 0},
        {"upright", {.module = 2.5, .degrees = 90}, 3, 3},
        {"on its head", {.degrees = 180}, 3, 3},
        {"a little out of focus", {.module = 2.5, .blur = 0.8}, 3, 3},
        {"more out of focus", {.module = 2.5, .blur = 1, .noise = 2}, 3, 2},
        {"far out of focus", {.module = 2.5, .blur = 2}, 2, 0},
        {"moved while it was taken", {.module = 2.5, .smear = 2.5}, 3, 3},
        {"upright and out of focus", {.module = 2.5, .degrees = 90, .blur = 1, .noise = 2}, 3, 2},
        {"grainy", {.module = 2.5, .noise = 12}, 3, 3},
        {"very grainy", {.module = 2.5, .noise = 30}, 2, 0},
        {"pale print", {.module = 2.5, .noise = 2, .ink = 90, .paper = 180}, 3, 3},
        {"paler", {.module = 2.5, .noise = 2, .ink = 110, .paper = 160}, 3, 0},
        {"hardly printed", {.module = 2.5, .noise = 5, .ink = 120, .paper = 150}, 2, 0},
        {"light from one side", {.module = 2.5, .shade = 0.6}, 3, 3},
        {"seen from the side", {.module = 2.5, .slant = 0.2}, 3, 3},
        {"some of all", {.module = 2.2, .degrees = 8, .slant = 0.1, .blur = 0.6, .noise = 3, .shade = 0.4}, 3, 3},
        {"too much of all", {.module = 1.8, .degrees = 12, .slant = 0.2, .blur = 1, .noise = 12, .shade = 0.5}, 2, 0},
    };
    constexpr int numbers = 3;
    std::size_t at = 0;
    for (const auto& level : levels)
        for (const auto kind : kinds) {
            constexpr std::size_t step = PAIRSTAND_ONE_IN == 1 ? 1 : 9; // it shares no divisor with the kinds
            if (++at % step != 0)
                continue;
            CAPTURE(level.why);
            CAPTURE(static_cast<int>(kind));
            const Counts counts = try_numbers(level.flaws, kind, numbers);
            CHECK(counts.misread == 0);
            CHECK(counts.read >= (kind == Symbology::Itf14 ? level.of_itf : level.must_read));
        }
}

TEST_CASE("reader: the same digits in other bars are told apart")
{
    // 01234565 passes as EAN-8 and as UPC-E (GS1 General Specifications); only the bars say which it is.
    for (const auto kind : {Symbology::Ean8, Symbology::UpcE}) {
        const auto reading = kiosk::read(test::draw({.symbology = kind, .digits = "01234565"}).view());
        CHECK(reading == Reading{"01234565", kind});
    }
    // A UPC-A is the EAN-13 with a zero in front, line for line: read as what the package shows.
    const auto upc_a = kiosk::read(test::draw({.symbology = Symbology::UpcA, .digits = "614141007349"}).view());
    CHECK(upc_a == Reading{"614141007349", Symbology::UpcA});
}

TEST_CASE("reader: where there is no code, none is read")
{
    for (const double noise : {0.0, 10.0, 60.0})
        CHECK_FALSE(kiosk::read(test::draw_empty({.noise = noise}).view()));

    kiosk::Frame stripes = test::draw_empty({}); // a fence, a shirt: dark and light of one width
    for (std::size_t i = 0; i < stripes.pixels.size(); ++i)
        stripes.pixels[i] = (i % 640) / 4 % 2 == 0 ? 20 : 230;
    CHECK_FALSE(kiosk::read(stripes.view()));
}

TEST_CASE("reader: a picture that cannot be one is refused")
{
    const kiosk::Frame frame = test::draw({.digits = "9521234543213"});
    CHECK(kiosk::read(frame.view()));
    CHECK_FALSE(kiosk::read({}));
    CHECK_FALSE(kiosk::read({frame.pixels.data(), 0, 480, 640}));
    CHECK_FALSE(kiosk::read({frame.pixels.data(), 640, -480, 640}));
    CHECK_FALSE(kiosk::read({frame.pixels.data(), 640, 480, 639}));
    CHECK_FALSE(kiosk::read({frame.pixels.data(), 640, 7, 640}));
    // Part of a larger picture: the rows are farther apart than they are long.
    CHECK(kiosk::read({frame.pixels.data() + 640 * 200, 640, 80, 640}));
}
