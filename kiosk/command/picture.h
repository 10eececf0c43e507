// Draws one screen into a picture and writes pictures to files: works where there is no display at all.
#pragma once

#include "kiosk/command/rasteriser.h"
#include "ui/look/fonts.h"
#include "ui/look/theme.h"
#include "ui/notes.h"
#include "ui/state.h"
#include "ui/words/language.h"

#include <filesystem>

namespace kiosk {

/// Which look a picture is drawn in.
struct PictureLook {
    const ui::Theme& theme;
    ui::FontFiles fonts;
    int width = 1280;
    int height = 800;
};

/// Draws the screen that the state names, in its text size. What the screen says goes into `notes` unless that is null.
/// Makes an ImGui context of its own and leaves the caller's as it was. Throws std::runtime_error for broken fonts.
[[nodiscard]] Picture draw_picture(const ui::State& state, const ui::Language& language, const PictureLook& look,
                                   ui::Notes* notes = nullptr);

/// Writes a picture as PNG. Throws std::runtime_error when the file cannot be written.
void write_png(const Picture& picture, const std::filesystem::path& path);

} // namespace kiosk
