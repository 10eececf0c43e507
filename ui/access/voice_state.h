// What the voice is doing: part of the station's state, written by the session, followed by the narrator.
#pragma once

namespace ui {

/// How the station speaks.
enum class VoiceMode {
    Off,     ///< silent, but for its tones
    Reading, ///< reads the screen from top to bottom, once
    Only     ///< speaks everything: the whole station without sight
};

/// The steps of loudness; each is 6 dB from the next.
inline constexpr int least_volume = 1;
inline constexpr int most_volume = 5;
inline constexpr int usual_volume = 3;

/// The steps of speed, in percent of the engine's usual one.
inline constexpr int voice_rates[] = {60, 80, 100, 130, 160, 200};
inline constexpr int usual_rate = 100;

/// The voice.
struct VoiceState {
    bool there = false; ///< there is something to speak with
    VoiceMode mode = VoiceMode::Off;
    bool paused = false; ///< in the middle of the words
    int rate_percent = usual_rate;
    int volume = usual_volume;
    unsigned again = 0; ///< counts up with each wish to hear the last words again
    unsigned begun = 0; ///< counts up with each wish to be read to
    bool operator==(const VoiceState&) const = default;
};

} // namespace ui
