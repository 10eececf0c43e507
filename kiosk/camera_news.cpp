#include "kiosk/camera_news.h"

namespace kiosk {

std::optional<Session::Camera> CameraNews::look(const CameraStatus& status)
{
    seen_ = seen_ || status.state == CameraState::Running;
    const auto now = to_say(status);
    if (!now || now == said_)
        return std::nullopt;
    said_ = now;
    return now;
}

/// Nothing: as before. A camera that nobody asked for by name is only missed once it was there.
std::optional<Session::Camera> CameraNews::to_say(const CameraStatus& status) const
{
    using Camera = Session::Camera;
    switch (status.state) {
    case CameraState::Off:
    case CameraState::Starting:
        return std::nullopt;
    case CameraState::Running:
        return status.black ? Camera::Black : status.small ? Camera::Small : Camera::Ready;
    case CameraState::NoCamera:
        return seen_ ? std::optional(Camera::Unplugged) : expected_ ? std::optional(Camera::None) : std::nullopt;
    case CameraState::Stalled:
        return seen_ || expected_ ? std::optional(Camera::Stalled) : std::nullopt;
    case CameraState::Busy:
        return Camera::Busy;
    case CameraState::Refused:
        return Camera::Refused;
    case CameraState::WrongFormat:
        return Camera::WrongFormat;
    }
    return std::nullopt;
}

} // namespace kiosk
