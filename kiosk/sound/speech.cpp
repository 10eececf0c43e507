#include "kiosk/sound/speech.h"

#include <algorithm>
#include <cstddef>
#include <espeak-ng/speak_lib.h>
#include <mutex>

namespace kiosk {
namespace {

/// The synthesizer's own word for it, and its own limits.
constexpr int usual_words_a_minute = 175;
static_assert(usual_words_a_minute * slowest_percent / 100 >= espeakRATE_MINIMUM);
static_assert(usual_words_a_minute * fastest_percent / 100 <= espeakRATE_MAXIMUM);

/// Samples come in pieces of so long: short, so that a stop is heeded soon.
constexpr int piece_ms = 40;

struct Listener {
    const OnSamples* on_samples;
    bool stopped = false;
};

int hand_on(short* samples, int count, espeak_EVENT* events)
{
    auto& listener = *static_cast<Listener*>(events->user_data);
    if (samples && count > 0 && !listener.stopped)
        listener.stopped = !(*listener.on_samples)({samples, static_cast<std::size_t>(count)});
    return listener.stopped ? 1 : 0;
}

/// Whether the synthesizer works. It is begun once and never ended: espeak-ng 1.51 hangs when it is ended twice.
bool begun()
{
    static const bool works = [] {
        if (espeak_Initialize(AUDIO_OUTPUT_SYNCHRONOUS, piece_ms, nullptr, espeakINITIALIZE_DONT_EXIT) !=
            speech_samples_a_second)
            return false;
        espeak_SetSynthCallback(&hand_on);
        return true;
    }();
    return works;
}

/// Bytes of the character that begins here; 0 where none does. Sequences that are too long, surrogates and numbers
/// past the last character are none (RFC 3629, section 4).
std::size_t character_bytes(std::string_view text)
{
    const auto byte = [&](std::size_t at) { return at < text.size() ? static_cast<unsigned char>(text[at]) : 0U; };
    const auto in = [&](std::size_t at, unsigned low, unsigned high) { return byte(at) >= low && byte(at) <= high; };
    const unsigned first = byte(0);
    if (first < 0x80)
        return 1;
    if (first >= 0xC2 && first <= 0xDF)
        return in(1, 0x80, 0xBF) ? 2 : 0;
    if (first >= 0xE0 && first <= 0xEF)
        return in(1, first == 0xE0 ? 0xA0 : 0x80, first == 0xED ? 0x9F : 0xBF) && in(2, 0x80, 0xBF) ? 3 : 0;
    if (first >= 0xF0 && first <= 0xF4)
        return in(1, first == 0xF0 ? 0x90 : 0x80, first == 0xF4 ? 0x8F : 0xBF) && in(2, 0x80, 0xBF) && in(3, 0x80, 0xBF)
                   ? 4
                   : 0;
    return 0;
}

/// Controls order the synthesizer about (its own begin with 1), so none goes through: C0, delete and C1.
bool is_control(std::string_view character)
{
    const auto first = static_cast<unsigned char>(character[0]);
    return first < 0x20 || first == 0x7F || (first == 0xC2 && static_cast<unsigned char>(character[1]) < 0xA0);
}

} // namespace

std::string clean_words(std::string_view words)
{
    std::string clean;
    clean.reserve(words.size());
    while (!words.empty()) {
        const auto bytes = character_bytes(words);
        const auto character = words.substr(0, std::max<std::size_t>(bytes, 1));
        if (bytes == 0 || is_control(character))
            clean += ' ';
        else
            clean += character;
        words.remove_prefix(character.size());
    }
    return clean;
}

Speech speak(std::string_view words, const std::string& voice, int rate_percent, const OnSamples& on_samples)
{
    static std::mutex one_at_a_time; // the synthesizer keeps its state in variables of the process
    const std::lock_guard lock(one_at_a_time);
    if (!begun() || espeak_SetVoiceByName(voice.c_str()) != EE_OK)
        return Speech::Failed;
    const int percent = std::clamp(rate_percent, slowest_percent, fastest_percent);
    espeak_SetParameter(espeakRATE, usual_words_a_minute * percent / 100, 0);
    Listener listener{&on_samples};
    const auto clean = clean_words(words);
    const auto ended =
        espeak_Synth(clean.c_str(), clean.size() + 1, 0, POS_CHARACTER, 0, espeakCHARS_UTF8, nullptr, &listener);
    if (listener.stopped)
        return Speech::Stopped;
    return ended == EE_OK ? Speech::Done : Speech::Failed;
}

} // namespace kiosk
