// What the leader chose about the camera: plain values, as station.conf has them.
#pragma once

#include <string>
#include <string_view>

namespace kiosk {

/// Where left and right are swapped.
enum class Mirror {
    No,      ///< nowhere
    Picture, ///< on the screen only, as in a mirror: for a camera that looks at the people
    Camera,  ///< by the camera, which looks into a mirror or prism: undone before bars are read
};

/// All choices about the camera.
struct CameraChoices {
    std::string which = "auto"; ///< "auto", "off" or a device file such as "/dev/video0"
    int rotate = 0;             ///< degrees clockwise by which its picture has to be turned: 0, 90, 180 or 270
    Mirror mirror = Mirror::Picture;
    int power_line_hz = 0; ///< of the lamps, against flicker: 50 or 60; 0: as the camera thinks best
    bool operator==(const CameraChoices&) const = default;
};

/// Whether this says which camera: "auto", "off", or a path below /dev.
[[nodiscard]] constexpr bool says_which_camera(std::string_view value)
{
    constexpr std::string_view devices = "/dev/";
    return value == "auto" || value == "off" || (value.starts_with(devices) && value.size() > devices.size());
}

} // namespace kiosk
