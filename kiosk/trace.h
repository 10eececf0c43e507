// Writes down what the station did, line by line, for whoever tests it: every answered scan and every drawn frame.
// A product that was touched where the camera was not sure counts as a scan of its number.
#pragma once

#include "kiosk/clock.h"
#include "kiosk/input/scan.h"
#include "kiosk/sound/orders.h"
#include "ui/notes.h"
#include "ui/state.h"

#include <fstream>
#include <string>

namespace kiosk {

/// A file with one line for each event, with tabs between the columns; line ends and tabs in words become blanks:
///   KIND  NUMBER  MICROSECONDS  SCREEN  LEFT  RIGHT  NOTICE  WORDS
/// KIND is `answer`, `frame` or `spoken`, NUMBER counts each kind from 1, MICROSECONDS is the clock that only runs
/// forward (CLOCK_MONOTONIC): for an answer when the scan was complete, for a frame when it was shown. LEFT and RIGHT
/// are 14 digits or `-`, NOTICE is the number of the notice shown. WORDS are for an answer the scanned text, ` | ` and
/// the notice; for a frame everything that it said, with ` | ` between; for something spoken what the voice was given.
/// Nothing of it is about people, but what they scanned: so nothing is written unless asked for.
class Trace {
public:
    /// Throws std::runtime_error when the file cannot be written.
    explicit Trace(const std::string& path);

    void answered(const Scan& scan, const ui::State& state);
    void drawn(const ui::State& state, const ui::Notes& notes, TimePoint when);
    void spoken(const Utterance& utterance, const ui::State& state, TimePoint when);

private:
    void line(const char* kind, std::size_t number, const ui::State& state, TimePoint when, const std::string& words);

    std::ofstream file_;
    std::size_t answers_ = 0;
    std::size_t frames_ = 0;
    std::size_t spoken_ = 0;
};

} // namespace kiosk
