#include "kiosk/camera_news.h"

#include <doctest/doctest.h>

#include <optional>

using kiosk::CameraNews;
using kiosk::CameraState;
using kiosk::CameraStatus;
using Camera = kiosk::Session::Camera;

namespace {

CameraStatus in(CameraState state)
{
    CameraStatus status;
    status.state = state;
    return status;
}

} // namespace

TEST_CASE("camera news: one that nobody asked for is only missed once it was there")
{
    CameraNews news(false);
    for (const auto state : {CameraState::Off, CameraState::Starting, CameraState::NoCamera, CameraState::Stalled})
        CHECK(news.look(in(state)) == std::nullopt);
    CHECK(news.look(in(CameraState::Running)) == Camera::Ready);
    CHECK(news.look(in(CameraState::Running)) == std::nullopt); // said
    CHECK(news.look(in(CameraState::Stalled)) == Camera::Stalled);
    CHECK(news.look(in(CameraState::NoCamera)) == Camera::Unplugged);
    CHECK(news.look(in(CameraState::Starting)) == std::nullopt);
    CHECK(news.look(in(CameraState::Running)) == Camera::Ready);

    CameraNews asked(true);
    CHECK(asked.look(in(CameraState::NoCamera)) == Camera::None);
}

TEST_CASE("camera news: one that is there and cannot be used is told of at once")
{
    CHECK(CameraNews(false).look(in(CameraState::Busy)) == Camera::Busy);
    CHECK(CameraNews(false).look(in(CameraState::Refused)) == Camera::Refused);
    CHECK(CameraNews(false).look(in(CameraState::WrongFormat)) == Camera::WrongFormat);
}

TEST_CASE("camera news: black before small, small before ready")
{
    CameraNews news(false);
    CameraStatus status = in(CameraState::Running);
    status.small = true;
    CHECK(news.look(status) == Camera::Small);
    status.black = true;
    CHECK(news.look(status) == Camera::Black);
    status.black = status.small = false;
    CHECK(news.look(status) == Camera::Ready);
}
