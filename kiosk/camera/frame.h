// One grey picture from a camera or a file.
#pragma once

#include "kiosk/clock.h"

#include <cstddef>
#include <cstdint>
#include <vector>

namespace kiosk {

/// Grey pixels that belong to somebody else: 0 is black, rows from top to bottom, `stride` bytes from row to row.
struct GreyView {
    const std::uint8_t* pixels = nullptr;
    int width = 0;
    int height = 0;
    int stride = 0;
};

/// A grey picture of its own, with rows that touch.
struct Frame {
    std::vector<std::uint8_t> pixels; ///< width x height bytes
    int width = 0;
    int height = 0;
    TimePoint when{};         ///< when the program got it
    std::uint64_t number = 0; ///< counts the frames taken, from 1

    [[nodiscard]] GreyView view() const { return {pixels.data(), width, height, width}; }
};

} // namespace kiosk
