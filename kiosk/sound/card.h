// The sound card with what is still to be heard: a tone first, then speech. Knows SDL's sound, nobody else does.
#pragma once

#include "kiosk/clock.h"

#include <cstdint>
#include <memory>
#include <span>
#include <vector>

struct _SDL_AudioStream;

namespace kiosk {

/// Loudness in steps of 6 dB, each twice the one below.
constexpr int softest_step = 1;
constexpr int usual_step = 3;
constexpr int loudest_step = 5;

/// One device for tones and speech. It rests while nothing is to be heard. One thread.
class Card {
public:
    Card();
    ~Card();
    Card(const Card&) = delete;
    Card& operator=(const Card&) = delete;

    /// Only opening tells: SDL's audio starts "fine" without any card. Nothing below is for a card that does not work.
    [[nodiscard]] bool works() const { return device_ != 0; }

    /// Plays a tone now, cutting off a tone that plays; speech goes on behind it. Tones sound in a pause too.
    void play(std::vector<std::int16_t> tone);
    /// Puts speech (22,050 samples a second) behind what is to be heard.
    void add_speech(std::span<const std::int16_t> samples);
    /// The last speech of an utterance was added: what the change of rate still holds is heard too.
    void end_speech();
    /// Forgets all speech; what is heard on is one buffer (21 ms). A tone plays to its end.
    void drop_speech();
    /// Holds speech, or lets it go on where it was.
    void pause(bool paused);
    /// From `softest_step` to `loudest_step`; heard at once.
    void set_volume(int step);

    /// How long speech that was added is still to be heard, the last buffer included; 0 when it was heard to the end.
    [[nodiscard]] Milliseconds speech_ahead();
    /// Stops the device, when nothing is to be heard: a running one wakes the processor.
    void rest_when_done();

private:
    void settle();
    void queue(std::span<const std::int16_t> samples, int halvings);
    void queue_anew();

    struct EndStream {
        void operator()(_SDL_AudioStream* stream) const;
    };

    bool started_ = false;
    unsigned device_ = 0;
    std::unique_ptr<_SDL_AudioStream, EndStream> rate_; ///< 22,050 to the device's 48,000
    std::vector<std::int16_t> tone_;                    ///< of a tone, not handed to the device by the last settle()
    std::vector<std::int16_t> speech_;                  ///< the same of speech
    int step_ = usual_step;
    bool paused_ = false;
    TimePoint handed_over_{}; ///< when speech was last seen waiting
};

} // namespace kiosk
