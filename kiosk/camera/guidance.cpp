#include "kiosk/camera/guidance.h"

namespace kiosk {

Hint hint_for(const WhatIsSeen& seen)
{
    // A UPC-A or EAN-13 is 95 modules wide (GS1 General Specifications, 5.2); bars of 1.5 pixels are read.
    constexpr float least_length = 95 * 1.5F;
    constexpr float most_share = 0.85F; // the light margin beside the bars must be seen too
    constexpr float near_share = 0.4F;
    constexpr float least_sharp = 0.3F; // out of focus, or smeared, by some 1.3 pixels
    if (!seen.something)
        return Hint::Aim;
    if (seen.read)
        return Hint::Done;
    if (!seen.bars.found)
        return seen.moves ? Hint::Aim : Hint::Turn;
    if (seen.bars.length < least_length)
        return Hint::Closer;
    if (seen.bars.share > most_share)
        return Hint::Back;
    if (seen.moves)
        return Hint::HoldStill;
    if (seen.bars.sharp < least_sharp)
        return seen.bars.share > near_share ? Hint::Back : Hint::HoldStill;
    return Hint::Whole;
}

Hint Guidance::see(const WhatIsSeen& seen, TimePoint now)
{
    Hint right = hint_for(seen);
    // What lies still is what lay there before: it stays read, and bars that were seen are there.
    const bool still = seen.something && !seen.moves;
    if (still && (shown_ == Hint::Done || (shown_ == Hint::Whole && right == Hint::Turn)))
        right = shown_;
    if (right != next_) {
        next_ = right;
        next_since_ = now;
    }
    if (next_ != shown_ && now - next_since_ >= limits_.sure && now - shown_since_ >= limits_.shown) {
        shown_ = next_;
        shown_since_ = now;
    }
    return shown_;
}

void Guidance::rest()
{
    const bool stays = shown_ == Hint::Closer || shown_ == Hint::Back || shown_ == Hint::Whole || shown_ == Hint::Done;
    if (!stays)
        shown_ = Hint::Aim;
    next_ = shown_;
}

} // namespace kiosk
