#include "kiosk/camera/steady.h"

#include <doctest/doctest.h>

#include <string>

using core::Symbology;
using kiosk::Milliseconds;
using kiosk::Reading;
using kiosk::Steady;

namespace {

const Reading crackers{"9521234543213", Symbology::Ean13};
const Reading soup{"614141007349", Symbology::UpcA};

/// Shows a row of frames, one every 33 ms (30 a second), "c" crackers, "s" soup, "." nothing; returns what was scanned.
std::string show(Steady& steady, kiosk::TimePoint& now, const std::string& frames, Milliseconds step = Milliseconds{33})
{
    std::string scanned;
    for (const char frame : frames) {
        now += step;
        std::optional<Reading> reading;
        if (frame != '.')
            reading = frame == 'c' ? crackers : soup;
        if (const auto scan = steady.see(reading, now)) {
            CHECK(scan->when == now);
            CHECK(scan->from == kiosk::Scan::From::Camera);
            scanned += scan->text == crackers.text ? 'C' : 'S';
        }
    }
    return scanned;
}

} // namespace

TEST_CASE("steady: which frames make which scans")
{
    struct Case {
        std::string why;
        std::string frames;
        std::string scanned;
    };
    const std::string a_second(30, '.');
    const std::string two_seconds(60, '.');
    const Case cases[] = {
        {"nothing", "....", ""},
        {"one frame is not enough: it may be misread", "..c....", ""},
        {"two that agree are", "cc", "C"},
        {"held still: one scan", std::string(300, 'c'), "C"},
        {"read in every third frame: still one", "c..c..c..c..c..c", "C"},
        {"two that agree with one unread between", "c.c", "C"},
        {"two that do not agree", "cs", ""},
        {"lost for a second: the same package", "cc" + a_second + "cc", "C"},
        {"away for two seconds: a new scan", "cc" + two_seconds + "cc", "CC"},
        {"one frame before it left and one after do not agree", "c" + two_seconds + "c", ""},
        {"another package", "ccccssss", "CS"},
        {"two packages in the picture, read in turn", "cscscscscscscs", "CS"},
        {"one misread frame between", "ccccsccccc", "C"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        Steady steady;
        kiosk::TimePoint now{};
        CHECK(show(steady, now, c.frames) == c.scanned);
    }
}

TEST_CASE("steady: a code is its digits and its bars")
{
    Steady steady;
    kiosk::TimePoint now{};
    CHECK_FALSE(steady.see(Reading{"01234565", Symbology::Ean8}, now));
    CHECK_FALSE(steady.see(Reading{"01234565", Symbology::UpcE}, now));
    const auto scan = steady.see(Reading{"01234565", Symbology::UpcE}, now);
    REQUIRE(scan);
    CHECK(scan->symbology == Symbology::UpcE);
}

TEST_CASE("steady: while the camera stands still nothing leaves the picture")
{
    Steady steady;
    kiosk::TimePoint now{};
    CHECK(show(steady, now, "ccc") == "C");
    CHECK(show(steady, now, ".cc", Milliseconds{60'000}) == ""); // pulled out and put back: the package is still there
    CHECK(show(steady, now, ".....cc", Milliseconds{300}) == "C"); // five frames without it in 1.5 s
}
