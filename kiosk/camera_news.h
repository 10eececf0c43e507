// What there is to say about the camera, from how it is: one sentence at a time, and only when it changes.
#pragma once

#include "kiosk/camera/camera_source.h"
#include "kiosk/session/session.h"

#include <optional>

namespace kiosk {

/// Follows the camera for as long as the station runs.
class CameraNews {
public:
    /// `expected`: somebody asked for this camera by name, so it is missed even if it never was there.
    explicit CameraNews(bool expected) : expected_(expected) {}

    /// What to say from now on; nothing while that is the same as before.
    [[nodiscard]] std::optional<Session::Camera> look(const CameraStatus& status);

private:
    [[nodiscard]] std::optional<Session::Camera> to_say(const CameraStatus& status) const;

    bool expected_;
    bool seen_ = false;
    std::optional<Session::Camera> said_;
};

} // namespace kiosk
