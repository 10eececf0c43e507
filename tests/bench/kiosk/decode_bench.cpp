// How long a frame of 1280 x 720 takes to read, and what each setting costs and finds: the library's own defaults
// first.
#include "kiosk/camera/reader.h"
#include "kiosk/camera/zxing_compat.h"
#include "tests/bench/timing.h"
#include "tests/support/barcode_frames.h"

#include <cstdio>
#include <string>
#include <vector>

using core::Symbology;
using kiosk::ZxingSettings;

namespace {

struct Shown {
    const char* what;
    std::vector<kiosk::Frame> frames;
    std::vector<std::string> digits; ///< empty: nothing to read
};

/// Some numbers, all drawn with the same flaws.
Shown shown(const char* what, test::Picture picture)
{
    Shown out{what, {}, {}};
    picture.width = 1280;
    picture.height = 720;
    for (std::uint64_t seed = 1; seed <= 6; ++seed) {
        picture.seed = seed;
        picture.digits = test::some_digits(picture.symbology, seed);
        out.frames.push_back(test::draw(picture));
        out.digits.push_back(picture.digits);
    }
    return out;
}

Shown nothing_shown()
{
    Shown out{"no code in the picture, noise 5", {}, {}};
    for (std::uint64_t seed = 1; seed <= 6; ++seed)
        out.frames.push_back(test::draw_empty({.width = 1280, .height = 720, .noise = 5, .seed = seed}));
    return out;
}

struct Way {
    const char* what;
    ZxingSettings settings;
    bool whole_reader = false; ///< as the station reads: shapes first
    std::optional<kiosk::Reading> read(const kiosk::GreyView& picture) const
    {
        return whole_reader ? kiosk::read(picture) : kiosk::zxing_read(picture, settings);
    }
};

const Way ways[] = {
    {"library defaults, every kind of code", {.product_codes_only = false, .agreeing_lines = 2}},
    {"the station's reader", {}, true},
    {"ours, one look", {}},
    {"one look without cartons (ITF)", {.cases_too = false}},
    {"one look without trying harder", {.try_harder = false}},
    {"one look without upright codes", {.try_rotate = false}},
    {"one look without a smaller copy", {.try_downscale = false}},
    {"one look with 2 agreeing lines", {.agreeing_lines = 2}},
};

void compare_ways(const Shown& pictures)
{
    std::printf("%s\n", pictures.what);
    double first = 0;
    for (const Way& way : ways) {
        std::size_t right = 0;
        std::size_t wrong = 0;
        for (std::size_t i = 0; i < pictures.frames.size(); ++i)
            if (const auto reading = way.read(pictures.frames[i].view()))
                ++(!pictures.digits.empty() && reading->text == pictures.digits[i] ? right : wrong);
        const double ms = bench::median_ms(9, [&] {
            for (const auto& frame : pictures.frames)
                bench::keep(way.read(frame.view()));
        });
        const double each = ms / static_cast<double>(pictures.frames.size());
        first = first == 0 ? each : first;
        bench::row(way.what, each, first);
        std::printf("%58s %zu of %zu read, %zu wrong\n", "", right, pictures.frames.size(), wrong);
    }
}

} // namespace

int main()
{
    std::printf("reading a frame of 1280 x 720: median time a frame, against the first row\n");
    compare_ways(nothing_shown());
    compare_ways(shown("EAN-13, clean, bars of 3 pixels", {}));
    compare_ways(shown("UPC-A as held: turned 8, soft, noise 5, shade", {.symbology = Symbology::UpcA,
                                                                         .module = 2.6,
                                                                         .degrees = 8,
                                                                         .slant = 0.1,
                                                                         .blur = 0.9,
                                                                         .noise = 5,
                                                                         .shade = 0.4}));
    compare_ways(shown("EAN-13 upright", {.degrees = 90}));
    compare_ways(shown("UPC-E near, out of focus", {.symbology = Symbology::UpcE, .module = 8, .blur = 4}));
    compare_ways(shown("EAN-13 too blurred to read", {.module = 2.5, .blur = 3, .noise = 5}));
}
