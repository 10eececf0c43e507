#include "kiosk/sound/sound.h"

#include "kiosk/sound/card.h"
#include "kiosk/sound/speech.h"

#include <algorithm>
#include <utility>

namespace kiosk {
namespace {

/// Longer than any tone and its way through the buffers: after that the card may rest.
constexpr Milliseconds after_a_tone{600};
/// How often a resting card looks whether the station ends.
constexpr Milliseconds rest{60'000};
/// So much speech is made before it is heard: a processor that is busy elsewhere leaves no gaps.
constexpr Milliseconds made_ahead{400};

} // namespace

Milliseconds time_to_say(const Utterance& utterance)
{
    // 175 words a minute, of five letters and a blank: common practice.
    constexpr std::int64_t ms_a_letter = 60'000 / (175 * 6);
    const int percent = std::clamp(utterance.rate_percent, slowest_percent, fastest_percent);
    return Milliseconds{static_cast<std::int64_t>(utterance.words.size()) * ms_a_letter * 100 / percent};
}

Sound::Sound(std::function<void()> complain, std::function<void()> wake)
    : complain_(std::move(complain)), wake_(std::move(wake)), thread_([this] { run(); })
{
}

Sound::~Sound()
{
    asked_.put([](SoundOrders& orders) { orders.stop = true; });
    thread_.join();
}

void Sound::play(Tone tone)
{
    asked_.put([tone](SoundOrders& orders) { orders.tone = tone; });
}

void Sound::say(Utterance utterance)
{
    asked_.put([&utterance](SoundOrders& orders) { orders.speech = std::move(utterance); });
}

void Sound::hush()
{
    asked_.put([](SoundOrders& orders) { orders.speech.emplace(std::nullopt); });
}

void Sound::pause(bool paused)
{
    asked_.put([paused](SoundOrders& orders) { orders.paused = paused; });
}

void Sound::set_volume(int step)
{
    asked_.put([step](SoundOrders& orders) { orders.volume = step; });
}

void Sound::run()
{
    Card card;
    state_ = card.works() ? State::Playing : State::Silent;
    if (wake_) // the screen offers to read aloud only where that can be heard
        wake_();
    if (!card.works() && complain_)
        complain_();
    while (!stopping_)
        if (next_)
            speak_next(card);
        else
            go_on(card);
}

/// Waits for orders, and lets the card rest when none come.
void Sound::go_on(Card& card)
{
    auto orders = asked_.take_within(after_a_tone);
    if (!orders.any()) {
        if (card.works())
            card.rest_when_done();
        orders = asked_.take_within(rest);
    }
    obey(card, std::move(orders));
}

void Sound::obey(Card& card, SoundOrders orders)
{
    stopping_ = stopping_ || orders.stop;
    if (orders.speech) {
        next_ = std::move(*orders.speech);
        cut_ = true;
    }
    paused_ = orders.paused.value_or(paused_);
    if (!card.works())
        return;
    if (orders.volume)
        card.set_volume(*orders.volume);
    if (orders.paused)
        card.pause(paused_);
    if (orders.speech)
        card.drop_speech();
    if (orders.tone)
        card.play(samples_of(*orders.tone));
}

void Sound::speak_next(Card& card)
{
    const Utterance utterance = *std::exchange(next_, std::nullopt);
    cut_ = false;
    report(utterance.id, SpeechNews::What::Begun);
    const bool aloud = card.works() && speak_aloud(card, utterance);
    if (!aloud)
        let_time_pass(card, time_to_say(utterance));
    if (!cut_ && !stopping_)
        report(utterance.id, aloud ? SpeechNews::What::Spoken : SpeechNews::What::Unspoken);
}

/// False when there is no voice for it.
bool Sound::speak_aloud(Card& card, const Utterance& utterance)
{
    const auto take = [&](std::span<const std::int16_t> samples) {
        card.add_speech(samples);
        return keep_up(card);
    };
    const Speech ended = speak(utterance.words, utterance.voice, utterance.rate_percent, take);
    if (ended == Speech::Done)
        wait_to_the_end(card);
    return ended != Speech::Failed;
}

/// Does what is asked meanwhile, until more speech is wanted; false when this speech is not.
bool Sound::keep_up(Card& card)
{
    Milliseconds patience{0};
    do {
        obey(card, asked_.take_within(patience));
        patience = paused_ ? rest : card.speech_ahead() - made_ahead;
    } while (!cut_ && !stopping_ && patience > Milliseconds{0});
    return !cut_ && !stopping_;
}

void Sound::wait_to_the_end(Card& card)
{
    card.end_speech();
    while (!cut_ && !stopping_) {
        const auto ahead = card.speech_ahead();
        if (ahead == Milliseconds{0})
            return;
        obey(card, asked_.take_within(paused_ ? rest : ahead));
    }
}

/// As long as if it were spoken, so that whoever reads along on the screen of a silent station keeps pace.
void Sound::let_time_pass(Card& card, Milliseconds time)
{
    while (!cut_ && !stopping_ && time > Milliseconds{0}) {
        const bool held = paused_;
        const auto before = Clock::now();
        obey(card, asked_.take_within(held ? rest : time));
        if (!held)
            time -= std::chrono::ceil<Milliseconds>(Clock::now() - before);
    }
}

void Sound::report(unsigned id, SpeechNews::What what)
{
    (void)news_.put({id, what}); // a loop that is thousands of sentences behind misses one
    if (wake_)
        wake_();
}

} // namespace kiosk
