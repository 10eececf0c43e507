// The three sounds of the station as samples: pure arithmetic, no device.
#pragma once

#include <cstdint>
#include <vector>

namespace kiosk {

/// What a sound tells. Each has its words on the screen as well.
enum class Tone {
    Found,   ///< a short rising pair of notes: the product is on the screen
    Refused, ///< one low note twice: this scan brought no product
    Touched, ///< a soft click
};

constexpr int samples_a_second = 48'000;

/// One tone, mono, full scale is 32,767; begins and ends in silence, so that nothing cracks.
[[nodiscard]] std::vector<std::int16_t> samples_of(Tone tone);

} // namespace kiosk
