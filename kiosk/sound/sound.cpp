#include "kiosk/sound/sound.h"

#include <SDL.h>

#include <chrono>
#include <dlfcn.h>

namespace kiosk {
namespace {

/// As alsa-lib's <alsa/error.h> declares snd_lib_error_handler_t.
using AlsaComplaint = void (*)(const char* file, int line, const char* function, int code, const char* format, ...);

void say_nothing(const char*, int, const char*, int, const char*, ...) {}

/// ALSA prints lines of its own where there is no card; our one sentence is enough. SDL loads the library while the
/// program runs, so it is asked for by the same name, and stays loaded with the handler in it. Without it all is quiet.
void hush_alsa()
{
    void* const library = dlopen("libasound.so.2", RTLD_LAZY | RTLD_LOCAL);
    if (!library)
        return;
    using SetHandler = int (*)(AlsaComplaint);
    if (const auto set = reinterpret_cast<SetHandler>(dlsym(library, "snd_lib_error_set_handler")))
        set(&say_nothing);
}

/// The card as SDL opens it; a device that plays nothing is paused, because a running one wakes the processor.
class Card {
public:
    Card()
    {
        hush_alsa();
        // Its own subsystem: whoever waits for the screen must not wait for this.
        if (SDL_InitSubSystem(SDL_INIT_AUDIO) != 0)
            return;
        started_ = true;
        SDL_AudioSpec wanted{};
        wanted.freq = samples_a_second;
        wanted.format = AUDIO_S16SYS;
        wanted.channels = 1;
        wanted.samples = 1024; // 21 ms: what is heard late is this buffer
        device_ = SDL_OpenAudioDevice(nullptr, 0, &wanted, nullptr, 0);
    }
    ~Card()
    {
        if (device_ != 0)
            SDL_CloseAudioDevice(device_);
        if (started_)
            SDL_QuitSubSystem(SDL_INIT_AUDIO);
    }
    Card(const Card&) = delete;
    Card& operator=(const Card&) = delete;

    /// Only opening tells: the subsystem starts "fine" without any card.
    [[nodiscard]] bool works() const { return device_ != 0; }

    void play(Tone tone)
    {
        const auto samples = samples_of(tone);
        SDL_ClearQueuedAudio(device_);
        SDL_QueueAudio(device_, samples.data(), static_cast<Uint32>(samples.size() * sizeof(samples[0])));
        SDL_PauseAudioDevice(device_, 0);
    }

    void rest_when_done()
    {
        if (SDL_GetQueuedAudioSize(device_) == 0)
            SDL_PauseAudioDevice(device_, 1);
    }

private:
    bool started_ = false;
    SDL_AudioDeviceID device_ = 0;
};

/// Longer than any tone and its way through the buffers: after that the card may rest.
constexpr Milliseconds after_a_tone{600};
/// How often a resting card looks whether the station ends.
constexpr Milliseconds rest{60'000};

} // namespace

Sound::Sound(std::function<void()> complain) : complain_(std::move(complain)), thread_([this] { run(); }) {}

Sound::~Sound()
{
    stopping_ = true;
    asked_.put(Tone::Touched); // wakes the thread, is not played
    thread_.join();
}

void Sound::run()
{
    Card card;
    if (!card.works()) {
        state_ = State::Silent;
        if (complain_)
            complain_();
        return;
    }
    state_ = State::Playing;
    Milliseconds patience = rest;
    while (true) {
        const auto tone = asked_.take_within(patience);
        if (stopping_)
            return;
        if (tone)
            card.play(*tone);
        else
            card.rest_when_done();
        patience = tone ? after_a_tone : rest;
    }
}

} // namespace kiosk
