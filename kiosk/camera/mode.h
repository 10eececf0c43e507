// The ways in which a camera can send pictures, and which of them is best for reading bars.
#pragma once

#include <optional>
#include <span>
#include <string>

namespace kiosk {

/// One way of sending: kind of picture, size, pace.
struct Mode {
    /// GStreamer's name of an uncompressed format ("YUY2"); empty: JPEG.
    std::string raw_format;
    int width = 0;  ///< pixels
    int height = 0; ///< pixels
    int frames = 0; ///< so many in `seconds`; 0: the driver does not say
    int seconds = 1;
    bool operator==(const Mode&) const = default;
};

/// Whether the picture has so many pixels that bars are read at arm's length: 1280 x 720 (common practice).
[[nodiscard]] bool has_enough_pixels(int width, int height);

/// The best of them; nothing when there is none. Enough pixels come before more frames a second: of those with 1280 x
/// 720 or more, up to 1920 x 1200, and ten frames a second or more, the one with most frames (more than 30 count as
/// 30), then the smallest, then the one without JPEG, which costs nothing to decode. Failing these: a larger one, else
/// the largest of the smaller ones, else the largest of the slow ones. The figures are common practice.
[[nodiscard]] std::optional<Mode> best_mode(std::span<const Mode> modes);

/// The mode as GStreamer's caps: "image/jpeg,width=1280,height=720,framerate=30/1".
[[nodiscard]] std::string caps_of(const Mode& mode);

} // namespace kiosk
