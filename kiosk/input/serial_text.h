// From the bytes of a scanner on a serial port to the texts of its codes. Knows no port and no clock.
#pragma once

#include "kiosk/clock.h"
#include "kiosk/input/key_names.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace kiosk {

/// Cuts bytes into codes. Carriage return, line feed, both, Tab, ETX or a pause ends one; STX begins one; what the
/// settings put around each code is taken off. Other control characters stay in the text: no product code has any but
/// the separator of element strings, so such a text is answered as what it is, once.
class SerialText {
public:
    explicit SerialText(ScannerKeys around = {}) : around_(std::move(around)) {}

    /// Takes bytes as they came, in whatever pieces; returns the texts that are complete now.
    [[nodiscard]] std::vector<std::string> take(std::string_view bytes, TimePoint at);

    /// Ends a text when nothing has come for long enough.
    [[nodiscard]] std::vector<std::string> idle(TimePoint now);

    /// When `idle` will have something to decide; nothing while no text is open.
    [[nodiscard]] std::optional<TimePoint> decides_at() const;

    /// A pause of this length ends a text. USB hands bytes on every millisecond, 9600 baud have one a millisecond:
    /// there is much to spare (common practice, as for keys).
    static constexpr Milliseconds pause{100};
    /// A longer text is cut here, answered, and ignored until it ends: no product code is that long.
    static constexpr std::size_t longest = 512;

private:
    void add(char byte, std::vector<std::string>& out);
    void end(std::vector<std::string>& out);

    ScannerKeys around_;
    std::string text_;
    bool overlong_ = false; ///< this text was cut and answered
    TimePoint last_{};
};

} // namespace kiosk
