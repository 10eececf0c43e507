// How wide the glass is: set by the leader, else measured at the station and kept, else as the panel says.
#pragma once

#include "kiosk/files/edid.h"

#include <filesystem>
#include <optional>

namespace kiosk {

/// The width in millimetres that was measured here and kept in the station's own folder; nothing when none was, or when
/// the file is damaged.
[[nodiscard]] std::optional<float> kept_glass_width(const std::filesystem::path& own_data);

/// Keeps it, in glass.conf. False when that could not be written.
[[nodiscard]] bool keep_glass_width(const std::filesystem::path& own_data, float width_mm);

/// What the one panel that is connected says of its size; nothing where none or several are.
[[nodiscard]] std::optional<PictureSizeMm> panel_size(const std::filesystem::path& panels = "/sys/class/drm");

/// What the leader has set (0: nothing), else what was measured, else what the panel says. `upright`: the picture
/// stands on its short side, whichever way the panel was made.
[[nodiscard]] std::optional<float> glass_width(const std::filesystem::path& own_data, int set_mm, bool upright,
                                               const std::filesystem::path& panels = "/sys/class/drm");

} // namespace kiosk
