// Draws what Dear ImGui asks to draw into a picture in memory: no display, no graphics card, no driver.
#pragma once

#include <imgui.h>

#include <cstddef>
#include <cstdint>
#include <vector>

namespace kiosk {

/// A picture: red, green, blue and opacity of each pixel, rows from top to bottom.
struct Picture {
    int width = 0;
    int height = 0;
    std::vector<std::uint8_t> rgba; ///< width x height x 4
};

/// The atlas of fonts as the rasteriser reads it: one byte of opacity a texel.
struct AtlasPixels {
    const std::uint8_t* opacity = nullptr;
    int width = 0;
    int height = 0;
};

/// Draws every triangle of `data` over `ground`. There is one texture, the atlas. Blending is as ImGui's OpenGL backend
/// asks for, on 8-bit values as they are; a pixel belongs to a triangle when its centre does, and the texture is read
/// bilinearly at that centre. Positions are rounded to 1/256 of a pixel.
[[nodiscard]] Picture rasterise(const ImDrawData& data, AtlasPixels atlas, ImU32 ground);

} // namespace kiosk
