// The settings about the camera, taken from words: rows of settings_table.cpp.
#pragma once

#include "kiosk/desk/settings.h"

#include <string_view>

namespace kiosk {

/// Each takes a value over, or returns false and changes nothing: see SettingRow.
[[nodiscard]] bool take_camera(std::string_view value, Settings& settings);
/// Degrees.
[[nodiscard]] bool take_camera_rotate(std::string_view value, Settings& settings);
/// Words for Mirror.
[[nodiscard]] bool take_camera_mirror(std::string_view value, Settings& settings);
/// Hertz, or auto.
[[nodiscard]] bool take_power_line(std::string_view value, Settings& settings);

} // namespace kiosk
