// Picks the camera and its mode by itself, and sets focus and exposure where the driver lets it.
// Source: the kernel's Video for Linux API, version 2 (linux/videodev2.h), "Querying capabilities", "Data formats",
// "User controls" and "Camera control reference".
#pragma once

#include "kiosk/camera/camera_state.h"
#include "kiosk/camera/mode.h"
#include "kiosk/camera/video_calls.h"

#include <optional>
#include <string>
#include <vector>

namespace kiosk {

/// What a device file says of itself.
struct Device {
    std::string path;
    /// Running: it can be used. NoCamera: it is gone, or gives no pictures (many cameras own a second device file for
    /// numbers about the picture). Busy, Refused, WrongFormat (no kind of picture that we know): why it cannot.
    CameraState state = CameraState::NoCamera;
    std::vector<Mode> modes;
};

/// Asks the device. Sets nothing, and starts nothing.
[[nodiscard]] Device look_at_device(const VideoCalls& calls, const std::string& path);

/// Lets the camera focus and expose by itself, with an exposure no longer than a frame takes, so that a package in a
/// hand is not smeared; and keeps its picture from flickering under lamps of that frequency (50 or 60 Hz; 0: as the
/// camera thinks best). What the driver does not have stays as it is. Returns how many controls were set.
int set_controls(const VideoCalls& calls, const std::string& path, int power_line_hz);

/// The beginnings of pipelines to try, best first; and why there is none.
struct SourceChoice {
    std::vector<std::string>
        sources; ///< of the best camera its best mode, then whatever it likes; then the next camera
    std::vector<std::string> devices;            ///< the camera behind each
    CameraState trouble = CameraState::NoCamera; ///< where there is no source
};

/// Looks at `device`, or at all of them where it is empty. With several cameras those with enough pixels come first.
[[nodiscard]] SourceChoice choose_sources(const VideoCalls& calls, const std::string& device);

} // namespace kiosk
