// What a panel says of its own size: EDID, as the kernel hands it out.
#pragma once

#include <cstdint>
#include <optional>
#include <span>

namespace kiosk {

/// The size of a picture in millimetres.
struct PictureSizeMm {
    int width = 0;
    int height = 0;
    bool operator==(const PictureSizeMm&) const = default;
};

/// The size that an EDID block names (VESA E-EDID 1.4: of the first detailed timing, 3.10.2, else in whole centimetres,
/// 3.6.2). Nothing where the bytes are no EDID, name no size, or one that cannot be: many panels fill in the form of
/// the picture (16 x 9) in place of its size.
[[nodiscard]] std::optional<PictureSizeMm> size_in_edid(std::span<const std::uint8_t> bytes);

} // namespace kiosk
