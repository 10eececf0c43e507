#include "kiosk/camera/video_calls.h"

#include <algorithm>
#include <cerrno>
#include <fcntl.h>
#include <filesystem>
#include <sys/ioctl.h>
#include <unistd.h>
#include <utility>

namespace kiosk {
namespace {

/// Shorter names first, so that video2 stands before video10.
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

int open_device(const std::string& device)
{
    // Without waiting: a device that another program holds must not hold us.
    const int descriptor = ::open(device.c_str(), O_RDWR | O_NONBLOCK | O_CLOEXEC);
    return descriptor < 0 ? -errno : descriptor;
}

int ask_device(int descriptor, unsigned long request, void* argument)
{
    int answer = 0;
    do {
        answer = ::ioctl(descriptor, request, argument);
    } while (answer < 0 && errno == EINTR);
    return answer < 0 ? -errno : 0;
}

} // namespace

VideoCalls kernel_video_calls()
{
    return {devices_here, open_device, ask_device, [](int descriptor) { ::close(descriptor); }};
}

} // namespace kiosk
