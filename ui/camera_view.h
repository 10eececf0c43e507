// The small live picture of the camera, as screens show it: pixels by value, and the words that help.
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

namespace ui {

/// Grey pixels, rows from top to bottom: 0 is black.
struct CameraView {
    /// At most this many pixels: each becomes a corner of what is drawn, and there is room for some 65,000 corners.
    static constexpr int most_pixels = 14'400;

    int width = 0;
    int height = 0;
    std::shared_ptr<const std::vector<std::uint8_t>> grey; ///< width x height bytes; nothing: no picture yet
    std::string hint;                                      ///< what to do, in words

    /// Whether there is something to draw.
    [[nodiscard]] bool has_picture() const
    {
        return grey && width > 1 && height > 1 && width <= most_pixels / height &&
               grey->size() == static_cast<std::size_t>(width) * static_cast<std::size_t>(height);
    }
};

} // namespace ui
