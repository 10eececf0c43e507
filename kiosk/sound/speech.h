// Turns words into sound: the one place that knows the speech synthesizer, which works inside this process.
#pragma once

#include <cstdint>
#include <functional>
#include <span>
#include <string>
#include <string_view>

namespace kiosk {

/// How an order to speak ended.
enum class Speech {
    Done,    ///< all samples were handed on
    Stopped, ///< the receiver had enough
    Failed,  ///< no such voice, or the synthesizer's data is not installed
};

/// Receives samples as they are made, mono, full scale is 32,767; false stops the speaking.
using OnSamples = std::function<bool(std::span<const std::int16_t>)>;

/// Samples a second of all speech.
constexpr int speech_samples_a_second = 22'050;

/// The slowest and the fastest speech, in percent of the usual 175 words a minute.
constexpr int slowest_percent = 50;
constexpr int fastest_percent = 250;

/// Speaks plain UTF-8 words and returns when all are handed on: much faster than they are heard, but the receiver may
/// take its time. What is no UTF-8 and what controls are said as blanks, mark-up as the signs that it is made of.
/// `voice` is "en-us", "es-419", "vi". One at a time: a second thread waits for the first.
[[nodiscard]] Speech speak(std::string_view words, const std::string& voice, int rate_percent,
                           const OnSamples& on_samples);

/// Words as the synthesizer gets them: UTF-8 without controls.
[[nodiscard]] std::string clean_words(std::string_view words);

} // namespace kiosk
