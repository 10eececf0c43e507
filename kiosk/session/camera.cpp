// What Welcome says about the camera.
#include "kiosk/session/session.h"

#include <memory>
#include <optional>
#include <string>

namespace kiosk {

using ui::ScreenId;
using ui::TextId;

namespace {

bool takes_pictures(Session::Camera camera)
{
    using Camera = Session::Camera;
    return camera == Camera::Ready || camera == Camera::Small || camera == Camera::Black;
}

std::optional<TextId> text_of(Hint hint)
{
    switch (hint) {
    case Hint::Aim:
        return TextId::camera_aim;
    case Hint::Closer:
        return TextId::camera_closer;
    case Hint::Back:
        return TextId::camera_back;
    case Hint::HoldStill:
        return TextId::camera_hold_still;
    case Hint::Turn:
        return TextId::camera_turn;
    case Hint::Whole:
        return TextId::camera_whole;
    case Hint::Done:
        return std::nullopt;
    }
    return std::nullopt;
}

ui::GreyPicture to_show(const Frame& frame)
{
    return {frame.width, frame.height, std::make_shared<const std::vector<std::uint8_t>>(frame.pixels)};
}

} // namespace

void Session::camera_named(std::string device)
{
    camera_device_ = std::move(device);
}

void Session::camera_is(Camera camera)
{
    camera_ = camera;
    refresh();
}

void Session::camera_sees(const CameraSight& sight)
{
    if (!takes_pictures(camera_))
        return;
    // While a page is read aloud its words stay: other ones would begin the reading anew.
    if (!state_.camera || state_.voice.mode != ui::VoiceMode::Reading)
        hint_ = sight.hint;
    state_.camera = ui::CameraView{to_show(sight.small), to_show(sight.middle), hint_words()};
}

/// Of a black picture Welcome says what to do in its sentence about the camera, and the test picture has none.
std::string Session::hint_words() const
{
    if (camera_ == Camera::Black)
        return state_.screen == ScreenId::DeskCamera ? language().text(TextId::camera_black) : std::string();
    const auto id = text_of(hint_);
    return id ? language().text(*id) : std::string();
}

/// One sentence about the camera, and one about its pictures where it takes some: nobody has to ask what becomes of
/// them.
void Session::refresh_camera()
{
    const auto say = [this](TextId id) { state_.reader = language().text(id); };
    switch (camera_) {
    case Camera::Off:
        state_.reader.clear();
        break;
    case Camera::Ready:
        say(TextId::camera_ready);
        break;
    case Camera::Small:
        say(TextId::camera_small);
        break;
    case Camera::Black:
        say(TextId::camera_black);
        break;
    case Camera::None:
        state_.reader = camera_device_.empty() ? language().text(TextId::camera_none)
                                               : language().fill(TextId::camera_none_at, {{"device", camera_device_}});
        break;
    case Camera::Unplugged:
        say(TextId::camera_unplugged);
        break;
    case Camera::Stalled:
        say(TextId::camera_stalled);
        break;
    case Camera::Busy:
        say(TextId::camera_busy);
        break;
    case Camera::Refused:
        say(TextId::camera_refused);
        break;
    case Camera::WrongFormat:
        say(TextId::camera_format);
        break;
    }
    if (takes_pictures(camera_))
        state_.reader += " " + language().text(TextId::camera_private);
    else
        state_.camera.reset();
    if (state_.camera)
        state_.camera->hint = hint_words();
}

} // namespace kiosk
