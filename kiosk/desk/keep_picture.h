// The one way in which a camera's picture reaches a disk: the leader's own test picture, by the leader's touch.
#pragma once

#include "core/error.h"
#include "kiosk/camera/frame.h"

#include <cstdint>
#include <filesystem>
#include <vector>

namespace kiosk {

/// The picture as the bytes of a PNG file, which every computer shows and `pairstand decode` reads. Empty for a picture
/// without pixels, and when SDL_image has no room.
[[nodiscard]] std::vector<std::uint8_t> png_of(const Frame& picture);

/// Writes it into the folder as pairstand-picture-1.png, or with the next number that is free. Returns where it lies.
/// Errors: CannotWrite, also for a picture without pixels.
[[nodiscard]] core::Result<std::filesystem::path> keep_picture(const Frame& picture,
                                                               const std::filesystem::path& folder);

} // namespace kiosk
