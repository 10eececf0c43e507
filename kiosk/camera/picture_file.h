// A picture file as grey pixels: what `decode` reads in place of a camera's frame.
#pragma once

#include "core/error.h"
#include "kiosk/camera/frame.h"

#include <string>

namespace kiosk {

/// Loads a PNG, JPEG, GIF (its first picture), BMP, PNM or WebP file; what is transparent is white. `when` and `number`
/// stay empty. Errors, with place.source: CannotRead (missing, a folder, not allowed), Empty, TooLarge (64 MiB, 64
/// million pixels or 32,768 in one direction: a small file may unpack to more than the machine has), BadEncoding (no
/// such picture, or broken).
[[nodiscard]] core::Result<Frame> load_picture(const std::string& path);

} // namespace kiosk
