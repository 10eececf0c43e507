// What Welcome says of the camera, and shows of what it sees.
#include "tests/kiosk/session/station.h"

#include <doctest/doctest.h>

#include <set>
#include <string>

using kiosk::Hint;
using test::Station;
using Camera = kiosk::Session::Camera;

namespace {

kiosk::Frame small_frame(std::uint8_t grey)
{
    kiosk::Frame frame;
    frame.width = 4;
    frame.height = 3;
    frame.pixels.assign(12, grey);
    return frame;
}

kiosk::CameraSight sight(std::uint8_t grey, Hint hint)
{
    return {small_frame(grey), small_frame(grey), hint};
}

} // namespace

TEST_CASE("session: what there is to say about the camera, and what becomes of its pictures")
{
    Station station;
    std::set<std::string> said;
    const std::string promise = "No picture is kept or sent.";
    for (const auto camera : {Camera::Ready, Camera::Small, Camera::Black, Camera::None, Camera::Unplugged,
                              Camera::Stalled, Camera::Busy, Camera::Refused, Camera::WrongFormat}) {
        station.session.camera_is(camera);
        const auto& words = station.state().reader;
        CHECK_FALSE(words.empty());
        CHECK(said.insert(words).second); // no two of them alike
        const bool takes_pictures = camera == Camera::Ready || camera == Camera::Small || camera == Camera::Black;
        CHECK(words.ends_with(promise) == takes_pictures);
        station.scan(test::shelf::oats); // however the camera is, the scanner works
        CHECK(station.on(ui::Side::Left) == "Oat rounds");
        station.ask(ui::StartOver{});
    }
    station.session.camera_is(Camera::Off);
    CHECK(station.state().reader.empty());
}

TEST_CASE("session: a camera that was asked for by name is missed by name")
{
    Station station;
    station.session.camera_named("/dev/video9");
    station.session.camera_is(Camera::None);
    CHECK(station.state().reader == "There is no camera at /dev/video9: plug it in, or name another one.");
}

TEST_CASE("session: no hint stands beside what says otherwise")
{
    Station station;
    station.session.camera_is(Camera::Black);
    station.session.camera_sees(sight(0, Hint::Aim));
    REQUIRE(station.state().camera);
    CHECK(station.state().camera->hint.empty()); // the sentence about the camera says it
    station.session.camera_is(Camera::Ready);
    CHECK_FALSE(station.state().camera->hint.empty());
    station.session.camera_sees(sight(7, Hint::Done));
    CHECK(station.state().camera->hint.empty());
}

TEST_CASE("session: the camera's picture is shown while it takes some, with what to do")
{
    Station station;
    station.session.camera_sees(sight(7, Hint::Closer));
    CHECK_FALSE(station.state().camera); // it takes none yet
    station.session.camera_is(Camera::Ready);
    CHECK_FALSE(station.state().camera);
    std::set<std::string> hints;
    for (const auto hint : {Hint::Aim, Hint::Closer, Hint::Back, Hint::HoldStill, Hint::Turn, Hint::Whole}) {
        station.session.camera_sees(sight(7, hint));
        REQUIRE(station.state().camera);
        CHECK(hints.insert(station.state().camera->hint).second);
    }
    CHECK(station.state().camera->has_picture());
    CHECK(station.state().camera->whole.grey->front() == 7);
    const auto english = station.state().camera->hint;
    station.ask(ui::NextLanguage{});
    CHECK(station.state().camera->hint != english);
    station.session.camera_is(Camera::Unplugged);
    CHECK_FALSE(station.state().camera);
}

TEST_CASE("session: the hint stays while a page is read aloud: another one would begin the reading anew")
{
    Station station;
    station.session.voice_is(true);
    station.session.camera_is(Camera::Ready);
    station.session.camera_sees(sight(7, Hint::Closer));
    const auto before = station.state().camera->hint;
    station.ask(ui::AskAccess{ui::ReadAloud{}});
    station.session.camera_sees(sight(8, Hint::Turn));
    CHECK(station.state().camera->hint == before);
    CHECK(station.state().camera->whole.grey->front() == 8); // the picture goes on
    station.session.voice_ended();
    station.session.camera_sees(sight(9, Hint::Turn));
    CHECK(station.state().camera->hint != before);
}
