// How large a picture in a file says it is, read from its first bytes: asked before a library unpacks it.
#pragma once

#include <cstdint>
#include <optional>
#include <span>

namespace kiosk {

/// Kind and size of a packed picture.
struct PictureSize {
    enum class Kind { Png, Jpeg, Gif, Bmp, Pnm, WebP };
    Kind kind = Kind::Png;
    std::uint32_t width = 0;
    std::uint32_t height = 0;
    bool operator==(const PictureSize&) const = default;
};

/// Nothing when the bytes begin no picture of these kinds, or end before its size.
/// Sources: PNG, 11.2.1 IHDR; JPEG, ITU-T T.81 B.2.2; GIF89a, 18; BITMAPINFOHEADER; the pages of Netpbm; RFC 9649
/// (WebP).
[[nodiscard]] std::optional<PictureSize> picture_size(std::span<const std::uint8_t> bytes);

} // namespace kiosk
