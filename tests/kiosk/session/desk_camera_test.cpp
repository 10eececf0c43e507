// The leader's test picture: shown and read at the desk, and kept by a touch alone.
#include "tests/kiosk/session/desk_station.h"

#include <doctest/doctest.h>

#include <filesystem>
#include <string>

namespace {

namespace fs = std::filesystem;
using test::DeskStation;
using ui::ScreenId;
using ui::TextId;

kiosk::Frame frame()
{
    kiosk::Frame frame;
    frame.width = 8;
    frame.height = 4;
    frame.pixels.assign(32, 77);
    return frame;
}

} // namespace

TEST_CASE("desk camera: what is read is told there, and nobody is led away")
{
    DeskStation station(false, [] { return std::optional(frame()); });
    station.touch(ui::OpenDesk{});
    CHECK(station.offers(TextId::desk_camera));
    station.touch(ui::OpenCamera{});
    CHECK(station.state().screen == ScreenId::DeskCamera);
    CHECK(station.page().camera);
    CHECK(station.lead().starts_with("Hold a package"));
    station.scan(test::shelf::oats);
    CHECK(station.state().screen == ScreenId::DeskCamera);
    CHECK(station.lead() == "Last read: " + test::shelf::oats);
    CHECK(station.on(ui::Side::Left).empty());
    station.touch(ui::OpenDesk{});
    station.scan(test::shelf::oats);
    CHECK(station.on(ui::Side::Left) == "Oat rounds");
}

TEST_CASE("desk camera: a picture is kept where the leader touches, and only then")
{
    DeskStation station(false, [] { return std::optional(frame()); });
    station.touch(ui::OpenCamera{});
    CHECK(fs::is_empty(station.stick()));
    CHECK(station.offers(TextId::desk_keep_picture));
    station.touch(ui::KeepPicture{0});
    CHECK(station.state().screen == ScreenId::DeskReport);
    const std::string path = station.stick() + "/pairstand-picture-1.png";
    CHECK(station.lead() == "The picture is kept as " + path + ".");
    CHECK(fs::file_size(path) > 32);
    CHECK(station.offers(TextId::desk_camera));
    station.touch(ui::KeepPicture{7}); // no such folder was listed
    CHECK(station.lead() == "The picture is kept as " + path + ".");
    fs::remove_all(station.stick()); // the stick is pulled out
    station.touch(ui::KeepPicture{0});
    CHECK(station.lead() == station.session.language().text(TextId::desk_stick_gone));
}

TEST_CASE("desk camera: a camera that gives no picture, and none at all")
{
    DeskStation silent(false, [] { return std::optional<kiosk::Frame>(); });
    silent.touch(ui::OpenCamera{});
    silent.touch(ui::KeepPicture{0});
    CHECK(silent.lead() == "The camera gave no picture. Nothing was kept.");
    CHECK(fs::is_empty(silent.stick()));
    DeskStation none;
    none.touch(ui::OpenDesk{});
    CHECK_FALSE(none.offers(TextId::desk_camera));
    none.touch(ui::OpenCamera{});
    CHECK(none.lead() == "There is no camera: plug one in.");
    CHECK_FALSE(none.offers(TextId::desk_keep_picture));
}

TEST_CASE("desk camera: of a black picture it says what to do")
{
    DeskStation station(false, [] { return std::optional(frame()); });
    station.touch(ui::OpenCamera{});
    station.session.camera_is(kiosk::Session::Camera::Black);
    station.session.camera_sees({frame(), frame(), kiosk::Hint::Aim});
    REQUIRE(station.state().camera);
    CHECK(station.state().camera->hint == station.session.language().text(TextId::camera_black));
}
