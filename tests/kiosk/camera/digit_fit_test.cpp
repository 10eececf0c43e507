#include "kiosk/camera/digit_choice.h"
#include "tests/support/barcode_frames.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>

using core::Symbology;

namespace {

kiosk::Strip strip_of(const test::Picture& picture)
{
    const kiosk::Frame frame = test::draw(picture);
    const auto regions = kiosk::find_bars(frame.view(), 1);
    REQUIRE(regions.size() == 1);
    return kiosk::straighten(frame.view(), regions.front());
}

/// From ink to paper, in the band where that is least.
float least_contrast(const kiosk::Strip& strip)
{
    float least = 255;
    for (const auto& band : strip.bands) {
        const auto [ink, paper] = std::ranges::minmax(band);
        least = std::min(least, paper - ink);
    }
    return least;
}

} // namespace

// Drawn bars go from grey 30 to 225 (barcode_frames.h). At a wrong angle their mean is the grey between.
TEST_CASE("straighten: bars do not wash out, however the code is turned")
{
    for (const double degrees : {0.0, 7.0, 20.0, 45.0, 70.0, 90.0, 160.0}) {
        CAPTURE(degrees);
        const auto strip = strip_of({.digits = "9521234543213", .module = 2.5, .degrees = degrees});
        CHECK(strip.bands.size() >= 4);
        CHECK(least_contrast(strip) > 0.8F * (225 - 30));
        // The code and half as much on both sides.
        CHECK(static_cast<double>(strip.bands.front().size()) == doctest::Approx(2 * strip.across).epsilon(0.02));
        CHECK(strip.across * strip.step > 95 * 2.5 * 0.85);
    }
}

// The bars are drawn by zint, which knows nothing of our shapes.
TEST_CASE("digit fit: each kind of code is its own likeliest, from both ends, sharp and soft")
{
    const struct {
        Symbology symbology;
        kiosk::Layout layout;
    } kinds[] = {{Symbology::Ean13, kiosk::ean_13},
                 {Symbology::UpcA, kiosk::ean_13},
                 {Symbology::Ean8, kiosk::ean_8},
                 {Symbology::UpcE, kiosk::upc_e}};
    for (const auto& kind : kinds)
        for (const double degrees : {0.0, 180.0})
            for (const double blur : {0.0, 1.8}) {
                CAPTURE(static_cast<int>(kind.symbology));
                CAPTURE(degrees);
                CAPTURE(blur);
                const std::string digits = test::some_digits(kind.symbology, 3);
                const auto fit = kiosk::fit_digits(strip_of({.symbology = kind.symbology,
                                                             .digits = digits,
                                                             .module = 2.5,
                                                             .degrees = degrees,
                                                             .blur = blur,
                                                             .noise = 3}),
                                                   kind.layout);
                REQUIRE(fit.evidence.size() == kind.layout.digits());
                const auto choice = kiosk::choose(fit.evidence, kind.layout);
                CHECK(choice.best == kiosk::Reading{digits, kind.symbology});
                CHECK(choice.lost < 1);
                CHECK(fit.likeness > 0.9);
                CHECK(fit.weakest > 0.7);
            }
}

TEST_CASE("digit fit: a strip shorter than a code fits nothing")
{
    CHECK(kiosk::fit_digits({}, kiosk::ean_13).evidence.empty());
    kiosk::Strip shorter;
    shorter.bands.assign(3, std::vector<float>(94, 100.0F));
    CHECK(kiosk::fit_digits(shorter, kiosk::ean_13).evidence.empty());
}
