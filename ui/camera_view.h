// The small live picture of the camera, as screens show it: pixels by value, and the words that help.
#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <vector>

namespace ui {

/// Grey pixels, rows from top to bottom: 0 is black.
struct GreyPicture {
    /// At most this many pixels: each becomes a corner of what is drawn, and there is room for some 65,000 corners.
    static constexpr int most_pixels = 14'400;

    int width = 0;
    int height = 0;
    std::shared_ptr<const std::vector<std::uint8_t>> grey{}; ///< width x height bytes; nothing: no picture yet

    /// Whether there is something to draw.
    [[nodiscard]] bool can_be_drawn() const
    {
        return grey && width > 1 && height > 1 && width <= most_pixels / height &&
               grey->size() == static_cast<std::size_t>(width) * static_cast<std::size_t>(height);
    }
};

/// What the camera sees, and what to do about it.
struct CameraView {
    GreyPicture whole;  ///< all of it, small
    GreyPicture middle; ///< its middle, pixel by pixel: what is sharp there is sharp for the reader
    std::string hint;   ///< what to do, in words; empty where there is nothing to do

    [[nodiscard]] bool has_picture() const { return whole.can_be_drawn(); }
};

} // namespace ui
