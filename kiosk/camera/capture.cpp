#include "kiosk/camera/capture.h"

#include "kiosk/camera/pipeline.h"

#include <algorithm>
#include <filesystem>
#include <utility>
#include <vector>

namespace kiosk {
namespace {

/// The camera device files of this machine: shorter names first, so that video2 stands before video10.
std::vector<std::string> devices_here()
{
    std::vector<std::string> devices;
    std::error_code ignored;
    for (const auto& entry : std::filesystem::directory_iterator("/dev", ignored))
        if (entry.path().filename().string().starts_with("video"))
            devices.push_back(entry.path());
    std::ranges::sort(devices, {}, [](const std::string& path) { return std::pair(path.size(), path); });
    return devices;
}

/// The source to try now. Many cameras own a second device file that gives no pictures, and after a replug the number
/// is another: so the next try takes the next one. Empty when there is none.
std::string source_for(const CaptureOptions& options, std::size_t tries)
{
    if (!options.source.empty())
        return options.source;
    if (!options.device.empty())
        return device_source(options.device);
    const auto devices = devices_here();
    return devices.empty() ? std::string() : device_source(devices[tries % devices.size()]);
}

} // namespace

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
        const std::string source = source_for(options_, tries);
        const CameraState end = source.empty() ? CameraState::NoCamera : run_pipeline(source);
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

/// Hands frames over until the pipeline breaks, falls silent or is to stop; returns what the camera is then.
CameraState Capture::run_pipeline(const std::string& source)
{
    constexpr Milliseconds patience{50};
    const auto pipeline = Pipeline::open(source);
    if (!pipeline)
        return CameraState::NoCamera;
    auto heard = options_.now();
    while (!stopping_) {
        auto look = pipeline->next(patience);
        if (look.gone)
            return CameraState::NoCamera;
        if (look.frame) {
            become(CameraState::Running);
            look.frame->when = options_.now();
            look.frame->number = ++frames_;
            on_frame_(std::move(*look.frame));
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
