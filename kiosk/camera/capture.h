// Takes frames from a camera for as long as it runs: survives no camera, a pulled cable and a camera that falls silent.
#pragma once

#include "kiosk/camera/camera_state.h"
#include "kiosk/camera/frame.h"
#include "kiosk/camera/turned.h"
#include "kiosk/camera/video_calls.h"

#include <atomic>
#include <condition_variable>
#include <functional>
#include <mutex>
#include <string>
#include <thread>

namespace kiosk {

/// Where frames come from and how patient to be.
struct CaptureOptions {
    /// The beginning of a GStreamer pipeline: the source, with whatever belongs to it. All behind it is always the
    /// same. Empty: a camera, see `device`.
    std::string source;
    /// The camera's device file ("/dev/video0"). Empty: the ones that are there, best first, until one works.
    std::string device;
    Turn turn;             ///< how its pictures are put right
    int power_line_hz = 0; ///< see set_controls
    VideoCalls calls = kernel_video_calls();
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
    /// Width and height of the newest frame, put right; 0 before there is one.
    [[nodiscard]] int width() const { return width_; }
    [[nodiscard]] int height() const { return height_; }
    /// From now on at most one frame in that time is taken from the camera; 0: as many as there are. Any thread.
    void take_every(Milliseconds time) { every_ = time; }

private:
    void run();
    [[nodiscard]] CameraState try_camera(std::size_t tries);
    CameraState run_pipeline(const std::string& source);
    void become(CameraState state);
    bool pause(Milliseconds length);

    CaptureOptions options_;
    std::function<void(Frame)> on_frame_;
    std::function<void(CameraState)> on_state_;
    std::atomic<CameraState> state_{CameraState::Off};
    std::atomic<bool> stopping_{false};
    std::atomic<int> width_{0};
    std::atomic<int> height_{0};
    std::atomic<Milliseconds> every_{Milliseconds{0}};
    std::mutex mutex_;
    std::condition_variable stopped_;
    std::uint64_t frames_ = 0;
    std::thread thread_;
};

} // namespace kiosk
