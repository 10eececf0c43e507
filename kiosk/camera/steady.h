// Turns readings of frame after frame into scans: one package held still is one scan.
#pragma once

#include "kiosk/camera/reader.h"
#include "kiosk/clock.h"
#include "kiosk/input/scan.h"

#include <optional>
#include <vector>

namespace kiosk {

/// When a code counts.
struct SteadyLimits {
    /// So many frames must agree before a new code is taken.
    int agreeing = 2;
    /// A code that was not read for so long has left the picture; the next time it is a new scan.
    Milliseconds gone{1500};
    /// Between two frames at most this much counts as time: a camera that stood still saw nothing leave.
    Milliseconds longest_step{300};
};

/// Remembers which codes are in the picture.
class Steady {
public:
    explicit Steady(SteadyLimits limits = {}) : limits_(limits) {}

    /// Takes what was read in one frame (often nothing); returns a scan when a code came into the picture.
    [[nodiscard]] std::optional<Scan> see(const std::optional<Reading>& reading, TimePoint now);

private:
    struct Seen {
        Reading reading;
        int times = 0;
        Milliseconds unseen{0};
    };
    void age(TimePoint now);

    SteadyLimits limits_;
    std::vector<Seen> seen_;
    std::optional<TimePoint> last_;
};

} // namespace kiosk
