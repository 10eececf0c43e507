// How hard the camera's pictures are looked at: hardly, while nothing moves; each frame, once something does.
#pragma once

#include "kiosk/camera/thumb.h"
#include "kiosk/clock.h"

#include <optional>
#include <string>
#include <vector>

namespace kiosk {

/// When to look. The figures are common practice: a package that comes is noticed in a fifth of a second, and one that
/// already lies there is read within a second.
struct AttentionLimits {
    int moved_cells = 3;          ///< of a Thumb: less is grain
    Milliseconds awake{3000};     ///< looked at each frame for so long after something moved
    Milliseconds glance{200};     ///< at rest: one frame in that time is compared
    Milliseconds full_look{1000}; ///< at rest: one frame in that time is read, whether something moved or not
};

/// Decides frame by frame. At rest the station compares a tiny copy of a few frames a second and reads hardly any.
class Attention {
public:
    explicit Attention(AttentionLimits limits = {}) : limits_(limits) {}

    /// Takes a frame's tiny copy. Returns whether the frame is to be read.
    [[nodiscard]] bool wants(const Thumb& thumb, TimePoint now);

    /// Each frame is looked at for a while, although nothing moved: the light came or went.
    void wake(TimePoint now) { awake_until_ = now + limits_.awake; }

    /// Takes what was read in such a frame (often nothing). Bars that were not read since something moved keep it
    /// awake: they must be read twice before they count.
    void has_read(const std::optional<std::string>& digits, TimePoint now);

    /// Whether each frame is looked at.
    [[nodiscard]] bool awake(TimePoint now) const { return now < awake_until_; }
    /// How much time between two frames is enough; 0: each frame is wanted.
    [[nodiscard]] Milliseconds pace(TimePoint now) const { return awake(now) ? Milliseconds{0} : limits_.glance; }
    /// Whether something moved between the last two frames.
    [[nodiscard]] bool moving() const { return moving_; }
    /// Whether the picture is another than the one that stood still without bars; false before there was such a one.
    [[nodiscard]] bool something_there() const;

private:
    AttentionLimits limits_;
    std::optional<Thumb> last_;      ///< of the frame before: what moves fast
    std::optional<Thumb> empty_;     ///< what it sees when nobody is there
    std::optional<Thumb> last_read_; ///< of the last frame that was read: what creeps
    TimePoint awake_until_{};
    TimePoint read_at_{};
    std::vector<std::string> known_; ///< read since something moved
    bool moving_ = false;
};

} // namespace kiosk
