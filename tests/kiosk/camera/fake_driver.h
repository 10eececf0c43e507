// A machine with cameras that are nothing but a table: the kernel's calls, answered from it.
#pragma once

#include "kiosk/camera/video_calls.h"

#include <cstdint>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace test {

/// One size of one format. `high` > 0: a range from width x height up to wide x high in steps of 16.
struct FakeSize {
    std::uint32_t fourcc;
    std::uint32_t width, height;
    std::vector<std::pair<std::uint32_t, std::uint32_t>> intervals; ///< seconds for frames: {1, 30}; none: not told
    std::uint32_t wide = 0, high = 0;
};

/// One camera, or another thing with a device file.
struct FakeDevice {
    int open_error = 0;             ///< errno
    std::uint32_t capabilities = 0; ///< V4L2_CAP_...
    std::vector<std::uint32_t> formats;
    std::vector<FakeSize> sizes;
    bool busy = false;
    std::map<std::uint32_t, std::vector<std::int32_t>> controls; ///< what each takes
    std::map<std::uint32_t, std::int32_t> set;                   ///< what it was set to
    bool endless = false;                                        ///< its lists never end
};

/// By device file.
class FakeDriver {
public:
    std::map<std::string, FakeDevice> devices;
    int open = 0; ///< opened and not closed

    /// Its calls; the driver must outlive them.
    [[nodiscard]] kiosk::VideoCalls calls();

private:
    [[nodiscard]] FakeDevice& at(int descriptor);
};

} // namespace test
