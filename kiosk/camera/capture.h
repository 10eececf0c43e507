// Takes frames from a camera for as long as it runs: survives no camera, a pulled cable and a camera that falls silent.
#pragma once

#include "kiosk/camera/frame.h"

#include <atomic>
#include <condition_variable>
#include <functional>
#include <mutex>
#include <string>
#include <thread>

namespace kiosk {

/// How the camera is.
enum class CameraState {
    Off,      ///< not started, or stopped
    Starting, ///< asked for, no frame yet
    Running,  ///< frames come
    NoCamera, ///< none there, or it went away; looked for again with growing pauses
    Stalled,  ///< there, but no frame came for too long; opened again with growing pauses
};

/// Where frames come from and how patient to be.
struct CaptureOptions {
    /// The beginning of a GStreamer pipeline: the source, with whatever belongs to it. All behind it is always the
    /// same. Empty: a camera, see `device`.
    std::string source;
    /// The camera's device file ("/dev/video0"). Empty: the ones that are there, one after the other until one works.
    std::string device;
    Milliseconds silence{3000};    ///< no frame for so long: the camera is stalled
    Milliseconds first_pause{250}; ///< before the second try; doubles with each
    Milliseconds longest_pause{5000};
    Now now = Clock::now;
};

/// Runs a GStreamer pipeline in a thread of its own and hands each frame over in that thread. Frames that come while
/// one is being looked at are dropped but the newest: whoever looks is never behind.
class Capture {
public:
    /// `on_frame` and `on_state` (may be empty) are called in the camera's thread; they must not call start or stop.
    Capture(CaptureOptions options, std::function<void(Frame)> on_frame,
            std::function<void(CameraState)> on_state = {});
    ~Capture();
    Capture(const Capture&) = delete;
    Capture& operator=(const Capture&) = delete;

    void start();
    /// Returns when the thread has ended: after what is being looked at, and at most some 50 ms.
    void stop();
    [[nodiscard]] CameraState state() const { return state_; }

private:
    void run();
    CameraState run_pipeline(const std::string& source);
    void become(CameraState state);
    bool pause(Milliseconds length);

    CaptureOptions options_;
    std::function<void(Frame)> on_frame_;
    std::function<void(CameraState)> on_state_;
    std::atomic<CameraState> state_{CameraState::Off};
    std::atomic<bool> stopping_{false};
    std::mutex mutex_;
    std::condition_variable stopped_;
    std::uint64_t frames_ = 0;
    std::thread thread_;
};

} // namespace kiosk
