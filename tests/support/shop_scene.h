// A package in front of a cheap camera, as geometry and light: where each pixel's ray meets the package, what is
// printed there, and what lies behind it. The bars come from zint (modules_of). Flaws of lens and sensor: shop_lens.h.
#pragma once

#include "core/code/symbology.h"

#include <cstdint>
#include <string>
#include <vector>

namespace test {

/// Light per pixel, rows from top to bottom; 1 is white paper in full light.
struct Light {
    int width = 0;
    int height = 0;
    std::vector<float> grey{};
    float& at(int x, int y)
    {
        return grey[static_cast<std::size_t>(y) * static_cast<std::size_t>(width) + static_cast<std::size_t>(x)];
    }
};

/// The face of the package that carries the code.
enum class Face {
    Flat,
    CanUpright, ///< a cylinder whose axis runs along the bars: the outer bars turn away
    CanLying,   ///< a cylinder whose axis runs across the bars: each bar is bent
};

/// One printed code on the package. `modules`: true for ink, without the light margins; empty: none is printed.
struct PrintedCode {
    std::vector<bool> modules{};
    double x = 0;              ///< middle of the code on the package, in modules from the package's own middle
    double y = 0;              ///< downwards
    double bar_height = 60;    ///< in modules
    double margin_left = 11;   ///< light margins, in modules
    double margin_right = 9;   ///<
    double ink_gain = 0;       ///< each bar is wider by so many modules (ink that ran), or narrower when negative
    bool figures_below = true; ///< the digits in letters below the bars, and light margins above and below
};

/// What the camera sees. Lengths on the package are in modules, in the frame in pixels, angles in degrees.
struct Scene {
    int width = 1280;
    int height = 720;
    double focal = 1108; ///< focal length in pixels: 60 degrees over 1280, as most webcams have (common practice)
    std::vector<PrintedCode> codes{};
    Face face = Face::Flat;
    double radius = 110; ///< of a can; 110 modules of 0.33 mm are 36 mm
    double module = 3;   ///< width of a module in the middle of the frame
    double turn = 0;     ///< of the package in the plane of the frame, clockwise
    double lean = 0;     ///< its top leans away
    double yaw = 0;      ///< its right side is farther away
    double off_x = 0;    ///< the package's middle, from the frame's middle, in pixels
    double off_y = 0;
    double ink = 0.06; ///< what the print reflects
    double paper = 0.85;
    double package = 0.4;  ///< of the package beside the label
    double behind = 0.3;   ///< of what is behind it
    double clutter = 0.5;  ///< 0 to 1: letters and edges beside the code and behind
    double shade = 0;      ///< light falls off by this part across the frame
    double shade_turn = 0; ///< in which direction
    double glare = 0;      ///< light that the surface mirrors, added in the middle of the spot
    double glare_x = 0;    ///< place of the spot, in modules on the package
    double glare_y = 0;
    double glare_size = 30; ///< in modules
    double skew = 0;        ///< rolling shutter: so many pixels sideways from the first row to the last
    std::uint64_t seed = 1; ///< of the clutter
};

/// The light that falls on the sensor through a perfect lens.
[[nodiscard]] Light light_of(const Scene& scene);

} // namespace test
