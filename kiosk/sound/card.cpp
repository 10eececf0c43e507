#include "kiosk/sound/card.h"

#include "kiosk/sound/speech.h"
#include "kiosk/sound/tones.h"

#include <SDL.h>

#include <algorithm>
#include <cstddef>
#include <dlfcn.h>
#include <utility>

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

/// 21 ms: what is heard late is this buffer.
constexpr Uint16 buffer_samples = 1024;
constexpr Milliseconds buffer_time{22};

/// Speech comes at full scale, as loud as the loudest step may be; tones at a third of it, so that they have one step
/// more. Neither is ever cut at full scale.
constexpr int tone_doublings = 1;

Milliseconds time_of(std::size_t samples)
{
    return Milliseconds{static_cast<std::int64_t>(samples) * 1'000 / samples_a_second};
}

/// The last so many samples.
void keep_last(std::vector<std::int16_t>& samples, std::size_t count)
{
    if (count < samples.size())
        samples.erase(samples.begin(), samples.end() - static_cast<std::ptrdiff_t>(count));
}

/// No sample is taken by the device while this lives.
class Held {
public:
    explicit Held(SDL_AudioDeviceID device) : device_(device) { SDL_LockAudioDevice(device_); }
    ~Held() { SDL_UnlockAudioDevice(device_); }
    Held(const Held&) = delete;
    Held& operator=(const Held&) = delete;

private:
    SDL_AudioDeviceID device_;
};

} // namespace

void Card::EndStream::operator()(_SDL_AudioStream* stream) const
{
    SDL_FreeAudioStream(stream);
}

Card::Card()
{
    hush_alsa();
    // Its own subsystem: whoever waits for the screen must not wait for this.
    if (SDL_InitSubSystem(SDL_INIT_AUDIO) != 0)
        return;
    started_ = true;
    rate_.reset(SDL_NewAudioStream(AUDIO_S16SYS, 1, speech_samples_a_second, AUDIO_S16SYS, 1, samples_a_second));
    if (!rate_)
        return;
    SDL_AudioSpec wanted{};
    wanted.freq = samples_a_second;
    wanted.format = AUDIO_S16SYS;
    wanted.channels = 1;
    wanted.samples = buffer_samples;
    device_ = SDL_OpenAudioDevice(nullptr, 0, &wanted, nullptr, 0);
}

Card::~Card()
{
    if (device_ != 0)
        SDL_CloseAudioDevice(device_);
    if (started_)
        SDL_QuitSubSystem(SDL_INIT_AUDIO);
}

void Card::play(std::vector<std::int16_t> tone)
{
    const Held held(device_);
    settle();
    tone_ = std::move(tone);
    queue_anew();
}

void Card::add_speech(std::span<const std::int16_t> samples)
{
    SDL_AudioStreamPut(rate_.get(), samples.data(), static_cast<int>(samples.size_bytes()));
    const auto bytes = static_cast<std::size_t>(std::max(0, SDL_AudioStreamAvailable(rate_.get())));
    if (bytes == 0)
        return;
    std::vector<std::int16_t> made(bytes / sizeof(std::int16_t));
    SDL_AudioStreamGet(rate_.get(), made.data(), static_cast<int>(bytes));
    const Held held(device_);
    settle();
    speech_.insert(speech_.end(), made.begin(), made.end());
    if (paused_)
        return;
    queue(made, loudest_step - step_);
    SDL_PauseAudioDevice(device_, 0);
}

void Card::end_speech()
{
    SDL_AudioStreamFlush(rate_.get());
    add_speech({});
}

void Card::drop_speech()
{
    SDL_AudioStreamClear(rate_.get());
    const Held held(device_);
    settle();
    speech_.clear();
    handed_over_ = {};
    queue_anew();
}

void Card::pause(bool paused)
{
    const Held held(device_);
    settle();
    paused_ = paused;
    queue_anew();
}

void Card::set_volume(int step)
{
    const Held held(device_);
    settle();
    step_ = std::clamp(step, softest_step, loudest_step);
    queue_anew();
}

Milliseconds Card::speech_ahead()
{
    const Held held(device_);
    settle();
    if (!speech_.empty())
        return time_of(tone_.size() + speech_.size()) + buffer_time;
    const auto last = std::chrono::ceil<Milliseconds>(handed_over_ + buffer_time - Clock::now());
    return std::max(Milliseconds{0}, last);
}

void Card::rest_when_done()
{
    if (SDL_GetQueuedAudioSize(device_) == 0)
        SDL_PauseAudioDevice(device_, 1);
}

/// What the device has not taken yet: speech stands at the end of its queue, a tone before it.
void Card::settle()
{
    const std::size_t queued = SDL_GetQueuedAudioSize(device_) / sizeof(std::int16_t);
    if (!speech_.empty())
        handed_over_ = Clock::now();
    if (!paused_)
        keep_last(speech_, queued);
    keep_last(tone_, paused_ ? queued : queued - speech_.size());
}

void Card::queue(std::span<const std::int16_t> samples, int halvings)
{
    std::vector<std::int16_t> scaled(samples.begin(), samples.end());
    for (auto& sample : scaled)
        sample = static_cast<std::int16_t>(halvings < 0 ? sample * (1 << -halvings) : sample / (1 << halvings));
    SDL_QueueAudio(device_, scaled.data(), static_cast<Uint32>(scaled.size() * sizeof(scaled[0])));
}

void Card::queue_anew()
{
    SDL_ClearQueuedAudio(device_);
    queue(tone_, loudest_step - step_ - tone_doublings);
    if (!paused_)
        queue(speech_, loudest_step - step_);
    if (SDL_GetQueuedAudioSize(device_) > 0)
        SDL_PauseAudioDevice(device_, 0);
}

} // namespace kiosk
