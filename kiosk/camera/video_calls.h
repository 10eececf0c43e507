// The kernel's calls for cameras (V4L2), one by one, so that a test can put a table in their place.
#pragma once

#include <functional>
#include <string>
#include <vector>

namespace kiosk {

/// What is asked of the kernel about cameras. A failed call answers with the negative errno.
struct VideoCalls {
    std::function<std::vector<std::string>()> list;     ///< the device files of this machine, in order
    std::function<int(const std::string& device)> open; ///< a descriptor to ask with
    std::function<int(int, unsigned long, void*)> ask;  ///< ioctl: descriptor, request, what goes with it; 0: done
    std::function<void(int descriptor)> close;
};

/// The kernel itself.
[[nodiscard]] VideoCalls kernel_video_calls();

} // namespace kiosk
