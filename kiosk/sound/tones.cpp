#include "kiosk/sound/tones.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <span>

namespace kiosk {
namespace {

struct Note {
    double hertz; // 0: silence
    double seconds;
    double loudness; // 1 is full scale
};

// Our own choice of notes. High enough for small loudspeakers, a fifth apart so that rising is heard as rising; the low
// pair is an octave and more below. Quiet: a store is no place for alarms.
constexpr Note found[] = {{880.0, 0.07, 0.25}, {1320.0, 0.11, 0.25}};
constexpr Note refused[] = {{330.0, 0.12, 0.35}, {0.0, 0.06, 0.0}, {330.0, 0.12, 0.35}};
constexpr Note touched[] = {{660.0, 0.015, 0.10}};

std::span<const Note> notes_of(Tone tone)
{
    switch (tone) {
    case Tone::Found:
        return found;
    case Tone::Refused:
        return refused;
    case Tone::Touched:
        return touched;
    }
    return {};
}

/// Swells and fades within a few milliseconds, so that no note starts or ends with a crack.
double envelope(double at, double seconds)
{
    constexpr double edge = 0.005;
    return std::clamp(std::min(at, seconds - at) / edge, 0.0, 1.0);
}

} // namespace

std::vector<std::int16_t> samples_of(Tone tone)
{
    std::vector<std::int16_t> samples;
    for (const Note& note : notes_of(tone)) {
        const int count = static_cast<int>(note.seconds * samples_a_second);
        for (int i = 0; i < count; ++i) {
            const double at = static_cast<double>(i) / samples_a_second;
            const double wave = std::sin(2 * std::numbers::pi * note.hertz * at);
            samples.push_back(static_cast<std::int16_t>(32'767 * note.loudness * envelope(at, note.seconds) * wave));
        }
    }
    samples.push_back(0);
    return samples;
}

} // namespace kiosk
