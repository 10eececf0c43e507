#include "kiosk/camera/camera_source.h"
#include "tests/kiosk/camera/film.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <atomic>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

using core::Symbology;
using kiosk::CameraSource;
using kiosk::CameraState;
using kiosk::Every;
using kiosk::Milliseconds;
using kiosk::Scan;
using test::Film;
using test::wait_for;

namespace {

/// A package as a customer holds it: a little turned, not quite in focus, some noise.
kiosk::Frame held(Symbology symbology, const std::string& digits, std::uint64_t seed = 1)
{
    return test::draw({.symbology = symbology,
                       .digits = digits,
                       .module = 2.4,
                       .degrees = 7,
                       .slant = 0.1,
                       .blur = 0.6,
                       .noise = 3,
                       .shade = 0.3,
                       .seed = seed});
}

kiosk::Frame nothing_held()
{
    return test::draw_empty({.noise = 3});
}

std::string texts(const std::vector<Scan>& scans)
{
    std::string out;
    for (const auto& scan : scans)
        out += (out.empty() ? "" : " ") + scan.text;
    return out;
}

} // namespace

// Frames go through the same pipeline as a camera's; only the source element is another.
TEST_CASE("camera: packages held before it come out as scans, one for each time")
{
    Film film; // each package for so long that a busy machine looks at it twice
    film.add(nothing_held(), 5);
    film.add(held(Symbology::Ean13, "9521234543213"), 24);
    film.add(nothing_held(), 40); // two seconds away
    film.add(held(Symbology::Ean13, "9521234543213", 2), 24);
    film.add(held(Symbology::UpcA, "614141007349"), 24);
    film.add(held(Symbology::UpcE, "01234565"), 24);
    film.add(held(Symbology::Ean8, "96385074"), 24);

    Every<Scan> scans;
    std::atomic<int> woken = 0;
    kiosk::CaptureOptions options;
    options.source = film.source(20);
    options.first_pause = Milliseconds{3'600'000};
    CameraSource camera(options, scans, [&woken] { ++woken; });
    CHECK(camera.status() == kiosk::CameraStatus{});
    camera.start();
    REQUIRE(wait_for([&] { return camera.status().state == CameraState::NoCamera; })); // the film is over
    const auto seen = scans.take_all();
    CHECK(texts(seen) == "9521234543213 9521234543213 614141007349 01234565 96385074");
    REQUIRE(seen.size() == 5);
    CHECK(seen[2].symbology == Symbology::UpcA);
    CHECK(seen[3].symbology == Symbology::UpcE);
    CHECK(seen[4].symbology == Symbology::Ean8);
    CHECK(seen[0].from == Scan::From::Camera);
    CHECK(woken == 5 + 3); // each scan; starting, running, gone
    CHECK(camera.status().readings >= 10);
    CHECK(camera.status().frames > camera.status().readings);
}

TEST_CASE("camera: a package that is still there after a pulled cable is not scanned again")
{
    Film film;
    film.add(held(Symbology::Ean13, "9521234543213"), 3);
    Every<Scan> scans;
    kiosk::CaptureOptions options;
    options.source = film.source(20, true) + " ! identity error-after=8";
    options.first_pause = Milliseconds{20};
    CameraSource camera(options, scans, {});
    camera.start();
    REQUIRE(wait_for([&] { return camera.status().readings >= 20; })); // at least three pipelines
    camera.stop();
    CHECK(texts(scans.take_all()) == "9521234543213");
    CHECK(camera.status().state == CameraState::Off);
}

namespace {

/// Runs a camera whose pipeline begins with this until something holds; returns how it is then.
kiosk::CameraStatus status_when(const std::string& source, const std::function<bool(const kiosk::CameraStatus&)>& holds)
{
    Every<Scan> scans;
    std::atomic<int> woken = 0;
    kiosk::CaptureOptions options;
    options.source = source;
    CameraSource camera(options, scans, [&woken] { ++woken; });
    camera.start();
    kiosk::CameraStatus status;
    CHECK(wait_for([&] { return holds(status = camera.status()); }));
    CHECK(woken >= 2); // starting, and what is told of it
    return status;
}

} // namespace

TEST_CASE("camera: a black picture and a small one are told of")
{
    const std::string black = "videotestsrc is-live=true pattern=black ! video/x-raw,width=1280,height=720";
    const auto capped = status_when(black, [](const auto& status) { return status.black; });
    CHECK(capped.state == CameraState::Running);
    CHECK_FALSE(capped.small);
    const auto runs = [](const auto& status) { return status.frames > 3; };
    const std::string grey = "videotestsrc is-live=true pattern=smpte ! video/x-raw";
    CHECK(status_when(grey + ",width=640,height=480", runs).small);
    const auto good = status_when(grey + ",width=1280,height=720", runs);
    CHECK_FALSE(good.small);
    CHECK_FALSE(good.black);
}

TEST_CASE("camera: with the cap off a bare wall is shown, though nothing in it moves")
{
    const auto flat = [](std::uint8_t grey) {
        kiosk::Frame frame = nothing_held();
        std::ranges::fill(frame.pixels, grey);
        return frame;
    };
    Film film;
    film.add(flat(0), 60);
    film.add(flat(150), 400);
    Every<Scan> scans;
    kiosk::CaptureOptions options;
    options.source = film.source(20);
    CameraSource camera(options, scans, {}, {.awake = Milliseconds{300}}, {.most_pixels = 1200, .mirrored = true});
    camera.start();
    REQUIRE(wait_for([&] { return camera.status().black; }));
    REQUIRE(wait_for([&] {
        const auto sight = camera.sight();
        return sight && std::ranges::max(sight->small.pixels) > 100;
    }));
    CHECK_FALSE(camera.status().black);
    camera.stop();
}

TEST_CASE("camera: at rest it still reads what is laid before it, and what lay there from the start")
{
    kiosk::AttentionLimits soon;
    soon.awake = Milliseconds{100}; // shorter than it takes to read two frames on a slow machine
    soon.full_look = Milliseconds{300};
    Film still;
    still.add(held(Symbology::Ean13, "9521234543213"));
    Every<Scan> scans;
    kiosk::CaptureOptions options;
    options.source = still.source(20, true);
    CameraSource camera(options, scans, {}, soon);
    camera.start();
    REQUIRE(wait_for([&] { return camera.status().readings >= 8; })); // at rest for a second and more
    CHECK(texts(scans.take_all()) == "9521234543213");                // once, though it lies there
    CHECK(camera.status().reads < camera.status().frames);
    camera.look_afresh(); // the leader opens the test picture
    std::vector<Scan> again;
    REQUIRE(wait_for([&] { return !(again = scans.take_all()).empty(); }));
    camera.stop();
    CHECK(texts(again) == "9521234543213");

    Film comes;
    comes.add(nothing_held(), 20);
    comes.add(held(Symbology::Ean13, "9521234543213"), 12);
    options.source = comes.source(20);
    options.first_pause = Milliseconds{3'600'000};
    CameraSource second(options, scans, {}, {.awake = Milliseconds{500}});
    second.start();
    REQUIRE(wait_for([&] { return second.status().state == CameraState::NoCamera; })); // the film is over
    CHECK(texts(scans.take_all()) == "9521234543213");
}

TEST_CASE("camera: small pictures and hints come while something moves, a whole picture when it is asked for")
{
    Film film;
    film.add(nothing_held(), 12);
    film.add(held(Symbology::Ean13, "9521234543213"), 12);
    Every<Scan> scans;
    kiosk::CaptureOptions options;
    options.source = film.source(20, true);
    CameraSource camera(options, scans, {}, {.awake = Milliseconds{300}}, {.most_pixels = 1200, .mirrored = true});
    CHECK_FALSE(camera.picture_within(Milliseconds{1})); // it has not begun
    camera.start();
    std::optional<kiosk::CameraSight> sight;
    REQUIRE(wait_for([&] { return (sight = camera.sight()).has_value(); }));
    CHECK(sight->small.width == 40);
    CHECK(sight->small.height == 30);
    const auto whole = camera.picture_within(Milliseconds{20'000});
    REQUIRE(whole);
    CHECK(whole->width == 640);
    CHECK(whole->height == 480);
    camera.stop();
}

namespace {

/// A package with a strip of tape over a digit.
kiosk::Frame taped(std::uint64_t seed)
{
    auto frame = test::draw({.symbology = Symbology::Ean13, .digits = "9521234543213", .noise = 3, .seed = seed});
    constexpr int module = 3;
    const int left = frame.width / 2 - 95 * module / 2 + module * (3 + 7 * 3); // its fifth digit
    for (int y = 0; y < frame.height; ++y)
        std::fill_n(frame.pixels.begin() + y * frame.width + left, 7 * module, std::uint8_t{200});
    return frame;
}

} // namespace

TEST_CASE("camera: of bars that stay unsure it hands on which code they may be, and no scan")
{
    Film film;
    for (std::uint64_t seed = 1; seed <= 8; ++seed)
        film.add(taped(seed));
    Every<Scan> scans;
    std::atomic<int> woken = 0;
    kiosk::CaptureOptions options;
    options.source = film.source(20, true);
    kiosk::AttentionLimits all_awake; // sanitizers take a second for a picture on a busy machine
    all_awake.awake = Milliseconds{60'000};
    CameraSource camera(
        options, scans, [&woken] { ++woken; }, all_awake);
    camera.start();
    std::optional<kiosk::Likely> likely;
    REQUIRE(wait_for([&] { return (likely = camera.likely()).has_value(); }));
    camera.stop();
    REQUIRE_FALSE(likely->codes.empty()); // the check digit says what the tape hides
    CHECK(likely->codes.front() == kiosk::Reading{"9521234543213", Symbology::Ean13});
    CHECK(scans.take_all().empty());
    CHECK(woken >= 3); // starting, running, this
}
