// The font files of this machine, read once.
#pragma once

#include "kiosk/files/data_folder.h"
#include "ui/look/fonts.h"

#include <filesystem>
#include <string>

namespace kiosk {

/// The bytes of the fonts that a station draws with.
struct FontBytes {
    std::string regular;
    std::string bold;
    std::string signs;

    /// As the look wants them; valid while this lives.
    [[nodiscard]] ui::FontFiles files() const;
};

/// Reads Noto Sans and DejaVu Sans from $PAIRSTAND_FONTS (one folder) when that is set, else from where Debian puts
/// them. Throws std::runtime_error naming the file and the package when one is missing.
[[nodiscard]] FontBytes read_fonts(const Environment& environment = process_environment);

} // namespace kiosk
