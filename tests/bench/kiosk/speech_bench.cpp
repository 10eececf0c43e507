// What speaking costs: from the order to the first sound at the card, and the making of a sentence.
#include "kiosk/sound/sound.h"
#include "kiosk/sound/speech.h"
#include "tests/bench/timing.h"
#include "tests/support/disk_card.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <thread>
#include <vector>

namespace {

constexpr int repeats = 15;
constexpr double samples_a_ms = 48.0;

struct Language {
    const char* voice;
    const char* words;
};
constexpr Language languages[] = {
    {"en-us", "Cedar Hollow oat rounds. Added sugars: 8 grams, 16 percent Daily Value."},
    {"es-419", "Aros de avena Cedar Hollow. Azúcares añadidos: 8 gramos, 16 por ciento del valor diario."},
};

/// Milliseconds of the card's own time from `say` to the first sample that is no silence. The file lags behind the
/// card by up to two buffers (43 ms), which count as waiting.
double first_sound(kiosk::Sound& sound, const test::DiskCard& card, unsigned id, const Language& language)
{
    const auto before = card.played().size();
    sound.say({id, language.words, language.voice, 100});
    constexpr int heard_at_all = 100; // of 32,767
    while (true) {
        const auto played = card.played();
        const auto from = played.begin() + static_cast<std::ptrdiff_t>(before);
        const auto first = std::find_if(from, played.end(), [](int sample) { return std::abs(sample) > heard_at_all; });
        if (first != played.end())
            return static_cast<double>(first - from) / samples_a_ms;
        std::this_thread::sleep_for(kiosk::Milliseconds{5});
    }
}

void bench_first_sound(const Language& language)
{
    const test::DiskCard card;
    kiosk::Sound sound;
    while (sound.state() == kiosk::Sound::State::Opening)
        std::this_thread::sleep_for(kiosk::Milliseconds{1});
    std::vector<double> times;
    for (unsigned id = 1; id <= repeats; ++id) {
        times.push_back(first_sound(sound, card, id, language));
        sound.hush();
        std::this_thread::sleep_for(kiosk::Milliseconds{150}); // the last buffers are through
    }
    const double cold = times.front(); // the synthesizer and its voice are read from disk
    times.erase(times.begin());
    std::ranges::sort(times);
    std::printf("%-7s first sound: %.0f ms the first time, then %.0f ms in the middle, %.0f ms at most\n",
                language.voice, cold, times[times.size() / 2], times.back());
}

void bench_making(const Language& language)
{
    std::size_t samples = 0;
    const double whole = bench::median_ms(repeats, [&] {
        samples = 0;
        (void)kiosk::speak(language.words, language.voice, 100, [&](std::span<const std::int16_t> made) {
            samples += made.size();
            return true;
        });
    });
    const double first = bench::median_ms(
        repeats, [&] { (void)kiosk::speak(language.words, language.voice, 100, [](auto) { return false; }); });
    std::printf("%-7s made: first samples after %.2f ms, all of %.1f s after %.1f ms\n", language.voice, first,
                static_cast<double>(samples) / kiosk::speech_samples_a_second, whole);
}

} // namespace

int main()
{
    for (const auto& language : languages) // before all else: the first sentence begins the synthesizer
        bench_first_sound(language);
    for (const auto& language : languages)
        bench_making(language);
    return 0;
}
