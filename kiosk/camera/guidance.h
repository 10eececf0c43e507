// The words that help somebody who holds a package before the camera: closer, hold still, turn the package.
#pragma once

#include "kiosk/camera/bars_seen.h"
#include "kiosk/clock.h"

namespace kiosk {

/// What to do.
enum class Hint {
    Aim,       ///< nothing in view: where to hold a package
    Done,      ///< just read: nothing
    Closer,    ///< bars, too small to be read
    Back,      ///< bars larger than the picture, or so near that they are not sharp
    HoldStill, ///< bars that move
    Turn,      ///< a package without bars in view
    Whole,     ///< bars that are still, large and sharp and yet not read: part of them is hidden, or shines
};

/// What is known of one frame.
struct WhatIsSeen {
    bool something = false; ///< the picture is not the empty one
    bool moves = false;
    bool read = false; ///< a code was read in it, or in one shortly before
    BarsSeen bars;
};

/// How fast words change. Common practice: nobody reads a word that is gone within a second.
struct GuidanceLimits {
    Milliseconds sure{400};   ///< it must have been the right word for so long
    Milliseconds shown{1000}; ///< and the word before must have been shown for so long
};

/// The right word for one frame, taken alone.
[[nodiscard]] Hint hint_for(const WhatIsSeen& seen);

/// Follows frame after frame, so that words do not flicker.
class Guidance {
public:
    explicit Guidance(GuidanceLimits limits = {}) : limits_(limits) {}
    /// Takes a frame; returns the word to show.
    Hint see(const WhatIsSeen& seen, TimePoint now);
    /// Nothing moves any more. What helps a package that lies still stays; everything else is as in the beginning.
    void rest();

private:
    GuidanceLimits limits_;
    Hint shown_ = Hint::Aim;
    Hint next_ = Hint::Aim;
    TimePoint shown_since_{};
    TimePoint next_since_{};
};

} // namespace kiosk
