// Plays tones and speaks in a thread of its own: a sound card that is slow, busy or missing never keeps the screen
// waiting.
#pragma once

#include "kiosk/mailbox.h"
#include "kiosk/sound/orders.h"
#include "kiosk/sound/tones.h"

#include <atomic>
#include <functional>
#include <thread>
#include <vector>

namespace kiosk {

class Card;

/// What became of an utterance. One that was cut off is not reported again.
struct SpeechNews {
    enum class What {
        Begun,    ///< its first samples are on their way
        Spoken,   ///< it was heard to the end
        Unspoken, ///< without a card or a voice: the time that its words take has passed, and nothing was heard
    };
    unsigned id = 0;
    What what = What::Begun;
    bool operator==(const SpeechNews&) const = default;
};

/// How long a voice takes for these words, roughly: what a silent station lets pass before it goes on.
[[nodiscard]] Milliseconds time_to_say(const Utterance& utterance);

/// The station's loudspeaker. Without a sound card the station is silent; everything it would sound is on the screen.
class Sound {
public:
    enum class State { Opening, Playing, Silent };

    /// Opens the sound card in the background. `complain` is called once when there is none, `wake` after each report
    /// of an utterance; both in the sound's thread, both may be empty.
    explicit Sound(std::function<void()> complain = {}, std::function<void()> wake = {});
    ~Sound();
    Sound(const Sound&) = delete;
    Sound& operator=(const Sound&) = delete;

    // All of these return at once, from any thread.

    /// Plays a tone, cutting off the one that plays. Speech waits for its end and goes on where it was.
    void play(Tone tone);
    /// Cuts off what is spoken, and speaks this.
    void say(Utterance utterance);
    /// Stops speaking, within one buffer of the card. Tones go on.
    void hush();
    /// Holds what is spoken, or lets it go on where it was. Lasts until it is said otherwise, whatever is spoken.
    void pause(bool paused);
    /// 1 to 5, each twice as loud as the one below (6 dB); 3 at first. For tones and speech, at once.
    void set_volume(int step);

    /// What became of utterances since this was asked last, oldest first.
    [[nodiscard]] std::vector<SpeechNews> speech_news() { return news_.take_all(); }

    [[nodiscard]] State state() const { return state_; }

private:
    void run();
    void go_on(Card& card);
    void obey(Card& card, SoundOrders orders);
    void speak_next(Card& card);
    [[nodiscard]] bool speak_aloud(Card& card, const Utterance& utterance);
    [[nodiscard]] bool keep_up(Card& card);
    void wait_to_the_end(Card& card);
    void let_time_pass(Card& card, Milliseconds time);
    void report(unsigned id, SpeechNews::What what);

    std::function<void()> complain_;
    std::function<void()> wake_;
    OrderBook asked_;
    Every<SpeechNews> news_;
    std::atomic<State> state_{State::Opening};
    // The thread's own:
    std::optional<Utterance> next_;
    bool cut_ = false; ///< what is spoken is to end
    bool stopping_ = false;
    bool paused_ = false;
    std::thread thread_; // last: it uses all of the above
};

} // namespace kiosk
