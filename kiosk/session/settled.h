// Codes about which the station has just had its answer, and which nobody is asked about again while they are in view.
#pragma once

#include "core/code/gtin.h"
#include "kiosk/clock.h"

#include <span>
#include <vector>

namespace kiosk {

/// What people answered, and what was scanned. A code stays settled until the camera has not seen it for `quiet`:
/// whoever goes on holding a package before it is not asked again and again. Time is passed in.
class Settled {
public:
    /// Long enough to put a package away, short enough to try it once more; common practice.
    static constexpr std::chrono::seconds quiet{8};

    void settle(const core::Gtin& code, TimePoint now);
    /// Whether one of these is settled; those of them that are have been seen once more.
    [[nodiscard]] bool sees(std::span<const core::Gtin> codes, TimePoint now);

private:
    struct Entry {
        core::Gtin code;
        TimePoint seen;
    };
    std::vector<Entry> entries_; ///< a few: old ones are dropped
};

} // namespace kiosk
