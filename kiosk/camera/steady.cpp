#include "kiosk/camera/steady.h"

#include <algorithm>

namespace kiosk {

std::optional<Scan> Steady::see(const std::optional<Reading>& reading, TimePoint now)
{
    age(now);
    if (!reading)
        return std::nullopt;
    auto seen = std::ranges::find(seen_, *reading, &Seen::reading);
    if (seen == seen_.end())
        seen = seen_.insert(seen_.end(), Seen{*reading});
    seen->unseen = Milliseconds{0};
    // Counted up to the frame that decides and no further: after it the code is simply there.
    if (seen->times >= limits_.agreeing || ++seen->times < limits_.agreeing)
        return std::nullopt;
    return Scan{reading->text, reading->symbology, Scan::From::Camera, now};
}

/// Lets the time since the last frame pass for every code, and forgets those that have left.
void Steady::age(TimePoint now)
{
    const auto step = last_ ? std::chrono::duration_cast<Milliseconds>(now - *last_) : Milliseconds{0};
    last_ = now;
    for (Seen& seen : seen_)
        seen.unseen += std::clamp(step, Milliseconds{0}, limits_.longest_step);
    std::erase_if(seen_, [this](const Seen& seen) { return seen.unseen >= limits_.gone; });
}

} // namespace kiosk
