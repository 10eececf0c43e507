// Runs of frames: somebody holds a package up to a cheap camera, the hand shakes and the package turns.
#pragma once

#include "tests/support/shop_shots.h"

#include <cstdint>

namespace test {

constexpr int frames_a_second = 30;

/// Frame `frame` (from 0) of a run: a setting of shop_shots.h, set in motion. What is printed, light, focus and
/// distance stay for the run; the hand sways and trembles, the package turns, grain and flickering lamps differ from
/// frame to frame. Frequencies and reaches are common practice: hands sway at 0.5 to 2 Hz and tremble at 8 to 12 Hz.
[[nodiscard]] Setting setting_of_run(int level, std::uint64_t number, int frame, FrameSize size = {});

} // namespace test
