#include "kiosk/camera/camera_source.h"
#include "tests/kiosk/camera/film.h"

#include <doctest/doctest.h>

#include <atomic>
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
    Film film;
    film.add(nothing_held(), 5);
    film.add(held(Symbology::Ean13, "9521234543213"), 12);
    film.add(nothing_held(), 40); // two seconds away
    film.add(held(Symbology::Ean13, "9521234543213", 2), 12);
    film.add(held(Symbology::UpcA, "614141007349"), 12);
    film.add(held(Symbology::UpcE, "01234565"), 12);
    film.add(held(Symbology::Ean8, "96385074"), 12);

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
