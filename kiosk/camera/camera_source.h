// The camera as a source of scans: frames are read in its thread, a package held still comes out as one Scan.
#pragma once

#include "kiosk/camera/added_up.h"
#include "kiosk/camera/attention.h"
#include "kiosk/camera/camera_sight.h"
#include "kiosk/camera/capture.h"
#include "kiosk/camera/doubt.h"
#include "kiosk/camera/guidance.h"
#include "kiosk/camera/likely.h"
#include "kiosk/camera/steady.h"
#include "kiosk/input/scan.h"
#include "kiosk/mailbox.h"

#include <atomic>
#include <cstdint>
#include <functional>

namespace kiosk {

/// What a screen may say about the camera.
struct CameraStatus {
    CameraState state = CameraState::Off;
    std::uint64_t frames = 0;   ///< looked at since the start
    std::uint64_t reads = 0;    ///< of them, those in which bars were looked for
    std::uint64_t readings = 0; ///< of them, those with a code
    bool black = false;         ///< nothing but black for some seconds
    bool small = false;         ///< its pictures have fewer pixels than bars at arm's length need
    bool operator==(const CameraStatus&) const = default;
};

/// How small pictures for the screen are made.
struct SightChoices {
    int most_pixels = 0;     ///< of each; 0: none are made
    bool mirrored = true;    ///< left and right swapped
    Milliseconds every{100}; ///< no more of them than that
};

/// Capture, reader and Steady in one thread. Scans go into the box; `wake` is called after each, and when there is
/// something else to say about the camera.
class CameraSource {
public:
    /// `scans` must outlive this. `wake` is called in the camera's thread; it may be empty.
    CameraSource(CaptureOptions options, Every<Scan>& scans, std::function<void()> wake, AttentionLimits limits = {},
                 SightChoices sights = {});

    void start() { capture_.start(); }
    void stop() { capture_.stop(); }
    /// Any thread.
    [[nodiscard]] CameraStatus status() const;
    /// What it saw last, once; nothing while nothing moves. Any thread.
    [[nodiscard]] std::optional<CameraSight> sight() { return sight_.take(); }
    /// What its pictures may show where none of them is sure, once. Any thread.
    [[nodiscard]] std::optional<Likely> likely() { return likely_.take(); }
    /// What is in the picture now counts as new: it is scanned once more. Any thread.
    void look_afresh() { afresh_ = true; }
    /// One whole picture, taken after this was called; nothing when none comes in that time. Any thread but the
    /// camera's, one at a time.
    [[nodiscard]] std::optional<Frame> picture_within(Milliseconds patience);

private:
    void look_at(const Frame& frame);
    void read_bars(const Frame& frame);
    void leave_to_a_question(bool read, TimePoint now);
    void follow_light(const Thumb& thumb, TimePoint now);
    void show(const Frame& frame);

    Every<Scan>& scans_;
    std::function<void()> wake_;
    AddedUp added_up_;
    Steady steady_;
    Doubt doubt_;
    Attention attention_;
    SightChoices sights_;
    Guidance guidance_;
    Newest<CameraSight> sight_;
    Newest<Likely> likely_;
    Newest<Frame> picture_;
    std::atomic<bool> wants_picture_{false};
    std::atomic<bool> afresh_{false};
    TimePoint shown_at_{};
    TimePoint read_at_{};
    bool was_awake_ = false;
    std::optional<TimePoint> black_since_;
    std::atomic<bool> black_{false};
    std::atomic<std::uint64_t> frames_{0};
    std::atomic<std::uint64_t> reads_{0};
    std::atomic<std::uint64_t> readings_{0};
    Capture capture_; // last: its thread uses all of the above and ends first
};

} // namespace kiosk
