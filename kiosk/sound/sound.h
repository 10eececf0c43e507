// Plays the tones in a thread of its own: a sound card that is slow, busy or missing never keeps the screen waiting.
#pragma once

#include "kiosk/mailbox.h"
#include "kiosk/sound/tones.h"

#include <atomic>
#include <functional>
#include <thread>

namespace kiosk {

/// The station's loudspeaker. Without a sound card the station is silent; everything it would sound is on the screen.
class Sound {
public:
    enum class State { Opening, Playing, Silent };

    /// Opens the sound card in the background. `complain` is called once, in the sound's thread, when there is
    /// none; it may be empty.
    explicit Sound(std::function<void()> complain = {});
    ~Sound();
    Sound(const Sound&) = delete;
    Sound& operator=(const Sound&) = delete;

    /// Plays a tone, cutting off the one that plays. Returns at once. Any thread.
    void play(Tone tone) { asked_.put(tone); }

    [[nodiscard]] State state() const { return state_; }

private:
    void run();

    std::function<void()> complain_;
    Newest<Tone> asked_;
    std::atomic<State> state_{State::Opening};
    std::atomic<bool> stopping_{false};
    std::thread thread_; // last: it uses all of the above
};

} // namespace kiosk
