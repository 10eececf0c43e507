// The one way in which a camera's picture reaches a disk: the leader's own test picture, by the leader's touch.
#pragma once

#include "core/error.h"
#include "kiosk/camera/frame.h"

#include <cstdint>
#include <filesystem>
#include <vector>

namespace kiosk {

/// The picture as the bytes of a BMP file with 256 greys, which every computer shows and `pairstand decode` reads.
/// Source: the Windows bitmap format with BITMAPINFOHEADER, from memory; read back by SDL_image in a test.
[[nodiscard]] std::vector<std::uint8_t> bmp_of(const Frame& picture);

/// Writes it into the folder as pairstand-picture-1.bmp, or with the next number that is free. Returns where it lies.
/// Errors: CannotWrite, also for a picture without pixels.
[[nodiscard]] core::Result<std::filesystem::path> keep_picture(const Frame& picture,
                                                               const std::filesystem::path& folder);

} // namespace kiosk
