// Frames as a cheap camera takes them in a shop, in four levels from straight to brutal, each with its truth.
#pragma once

#include "kiosk/camera/reader.h"
#include "tests/support/shop_lens.h"
#include "tests/support/shop_scene.h"

#include <cstdint>

namespace test {

/// One frame and what is in it.
struct Shot {
    kiosk::Frame frame;
    kiosk::Reading truth;
};

/// What a frame is made of, before it is drawn.
struct Setting {
    Scene scene{};
    Lens lens{};
    kiosk::Reading truth{};
};

/// The levels are ours, from straight to brutal. They are set so that the libraries by themselves read as many of 60
/// frames of each level as they read of a set of frames that others keep (within 3): ZXing-cpp 1.4 with its defaults
/// reads 59, 45, 14 and 3, zbar 0.23 at density 2 reads 60, 50, 21 and 8. Of the frames below they read 59, 46, 14, 4
/// and 60, 48, 20, 7.
constexpr int levels = 4;
constexpr std::uint64_t first_frame = 129;
constexpr std::uint64_t frames_a_level = 60;

/// Pixels of a frame. A smaller one is a part of a large one: what is in it is as large.
struct FrameSize {
    int width = 1280;
    int height = 720;
};
constexpr FrameSize small_frame{480, 360};

/// The frame with this number of a level (1 to 4); the same number gives the same frame.
[[nodiscard]] Setting setting_of(int level, std::uint64_t number, FrameSize size = {});
[[nodiscard]] Shot shot_of(const Setting& setting);

} // namespace test
