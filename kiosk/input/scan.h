// One reading of a bar code, whatever read it: the camera and the scanner hand the same thing on.
#pragma once

#include "core/code/symbology.h"

#include <chrono>
#include <string>

namespace kiosk {

/// What a reader saw. `text` is raw: nothing about it has been checked.
struct Scan {
    enum class From { Scanner, Camera, Finger };
    std::string text;
    core::Symbology symbology = core::Symbology::Unknown;
    From from = From::Scanner;
    std::chrono::steady_clock::time_point when{};
    bool operator==(const Scan&) const = default;
};

} // namespace kiosk
