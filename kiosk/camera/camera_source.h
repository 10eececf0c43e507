// The camera as a source of scans: frames are read in its thread, a package held still comes out as one Scan.
#pragma once

#include "kiosk/camera/capture.h"
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
    std::uint64_t readings = 0; ///< of them, those with a code
    bool operator==(const CameraStatus&) const = default;
};

/// Capture, reader and Steady in one thread. Scans go into the box; `wake` is called after each, and when the camera's
/// state changes.
class CameraSource {
public:
    /// `scans` must outlive this. `wake` is called in the camera's thread; it may be empty.
    CameraSource(CaptureOptions options, Every<Scan>& scans, std::function<void()> wake);

    void start() { capture_.start(); }
    void stop() { capture_.stop(); }
    /// Any thread.
    [[nodiscard]] CameraStatus status() const;

private:
    void look_at(const Frame& frame);

    Every<Scan>& scans_;
    std::function<void()> wake_;
    Steady steady_;
    std::atomic<std::uint64_t> frames_{0};
    std::atomic<std::uint64_t> readings_{0};
    Capture capture_; // last: its thread uses all of the above and ends first
};

} // namespace kiosk
