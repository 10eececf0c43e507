// Digits whose bars are equally far apart are told apart by their ink. Modules of each digit: ISO/IEC 15420, number
// sets A, B and C.
#include "kiosk/camera/ink.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

using core::Symbology;
using kiosk::Fit;
using kiosk::Reading;

namespace {

/// A fit of an EAN-13 that begins with 0 whose digits are seen with this ink, by a light that falls from one side.
Fit seen(const std::vector<double>& modules)
{
    Fit fit;
    fit.evidence.resize(modules.size());
    for (auto& digit : fit.evidence)
        for (std::size_t shape = 10; shape < 20; ++shape)
            digit[shape] = -5; // all of set A
    double light = -160;
    for (const double ink : modules)
        fit.ink.push_back((light += 3) + 12 * ink);
    return fit;
}

} // namespace

TEST_CASE("ink: three digits that were drawn aside past the check digit are found out by it")
{
    // Two frames of the long run, 65 and 54 ahead: 221 was read as 887, 777 as 111.
    const auto of_221 = seen({3, 5, 3, 3, 3, 3, /**/ 2, 4, 4, 4, 4, 4});
    const auto of_777 = seen({3, 3, 3, 5, 5, 5, /**/ 4, 2, 2, 2, 4, 4});
    CHECK(kiosk::may_be_drawn_aside({"075887604924", Symbology::UpcA}, of_221, kiosk::ean_13));
    CHECK_FALSE(kiosk::may_be_drawn_aside({"075221604924", Symbology::UpcA}, of_221, kiosk::ean_13));
    CHECK(kiosk::may_be_drawn_aside({"049633511149", Symbology::UpcA}, of_777, kiosk::ean_13));
    CHECK_FALSE(kiosk::may_be_drawn_aside({"049633577749", Symbology::UpcA}, of_777, kiosk::ean_13));
}

TEST_CASE("ink: only a code with a right check digit can be the other one, and nothing is no code")
{
    const auto blank = seen(std::vector<double>(12, 3));
    CHECK_FALSE(kiosk::may_be_drawn_aside({"614141007349", Symbology::UpcA}, blank, kiosk::ean_13));
    CHECK_FALSE(kiosk::may_be_drawn_aside({}, blank, kiosk::ean_13));
    CHECK_FALSE(kiosk::may_be_drawn_aside({"075887604924", Symbology::UpcA}, {}, kiosk::ean_13));
}
