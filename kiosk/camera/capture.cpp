#include "kiosk/camera/capture.h"

#include "kiosk/camera/device_choice.h"
#include "kiosk/camera/pipeline.h"

#include <algorithm>
#include <utility>

namespace kiosk {

Capture::Capture(CaptureOptions options, std::function<void(Frame)> on_frame, std::function<void(CameraState)> on_state)
    : options_(std::move(options)), on_frame_(std::move(on_frame)), on_state_(std::move(on_state))
{
    prepare_gstreamer(); // here and not in the thread: it may set an environment variable
}

Capture::~Capture()
{
    stop();
}

void Capture::start()
{
    if (thread_.joinable())
        return;
    stopping_ = false;
    thread_ = std::thread([this] { run(); });
}

void Capture::stop()
{
    if (!thread_.joinable())
        return;
    {
        const std::lock_guard lock(mutex_);
        stopping_ = true;
    }
    stopped_.notify_all();
    thread_.join();
}

void Capture::run()
{
    become(CameraState::Starting);
    auto length = options_.first_pause;
    for (std::size_t tries = 0; !stopping_; ++tries) {
        const auto frames_before = frames_;
        const CameraState end = try_camera(tries);
        if (stopping_)
            break;
        become(end);
        if (frames_ != frames_before) { // it worked: begin with short pauses, and with the same device
            length = options_.first_pause;
            --tries;
        }
        if (!pause(length))
            break;
        length = std::min(length * 2, options_.longest_pause);
    }
    become(CameraState::Off);
}

/// Asks anew with each try what there is: after a replug a camera has another number. Where one does not work, the next
/// try takes the next.
CameraState Capture::try_camera(std::size_t tries)
{
    if (!options_.source.empty())
        return run_pipeline(options_.source);
    const auto choice = choose_sources(options_.calls, options_.device);
    if (choice.sources.empty())
        return choice.trouble;
    const auto one = tries % choice.sources.size();
    set_controls(options_.calls, choice.devices[one], options_.power_line_hz);
    return run_pipeline(choice.sources[one]);
}

/// Hands frames over until the pipeline breaks, falls silent or is to stop; returns what the camera is then.
CameraState Capture::run_pipeline(const std::string& source)
{
    constexpr Milliseconds patience{50};
    const auto [pipeline, trouble] = Pipeline::open(source, options_.turn);
    if (!pipeline)
        return trouble;
    auto heard = options_.now();
    while (!stopping_) {
        pipeline->let_through(every_);
        auto brought = pipeline->next(patience);
        if (brought.end)
            return *brought.end;
        if (brought.frame) {
            width_ = brought.frame->width;
            height_ = brought.frame->height;
            become(CameraState::Running);
            brought.frame->when = options_.now();
            brought.frame->number = ++frames_;
            on_frame_(std::move(*brought.frame));
            heard = options_.now(); // after the looking: the camera is not silent because we are slow
        } else if (options_.now() - heard >= options_.silence) {
            return CameraState::Stalled;
        }
    }
    return CameraState::Off;
}

void Capture::become(CameraState state)
{
    if (state_.exchange(state) != state && on_state_)
        on_state_(state);
}

/// False when the pause was cut short by stop().
bool Capture::pause(Milliseconds length)
{
    std::unique_lock lock(mutex_);
    return !stopped_.wait_for(lock, length, [this] { return stopping_.load(); });
}

} // namespace kiosk
