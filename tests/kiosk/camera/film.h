// A film of grey pictures in a folder, and the source that plays it in place of a camera.
#pragma once

#include "kiosk/camera/capture.h"
#include "tests/support/barcode_frames.h"
#include "tests/support/temp_folder.h"

#include <functional>
#include <string>
#include <thread>

namespace test {

/// Frames of one size, kept as files until it goes out of scope. Rows are padded to four bytes, as GStreamer has them.
class Film {
public:
    /// Puts the frame on the end, so many times.
    void add(const kiosk::Frame& frame, int times = 1)
    {
        width_ = frame.width;
        height_ = frame.height;
        for (int i = 0; i < times; ++i) {
            std::string number = std::to_string(frames_++);
            number.insert(0, 5 - number.size(), '0');
            write_raw(frame, folder_.file(number + ".grey"));
        }
    }

    /// The beginning of a pipeline that plays the film in its own time.
    [[nodiscard]] std::string source(int rate, bool again_and_again = false) const
    {
        return "multifilesrc location=\"" + folder_.file("%05d.grey") +
               "\" index=0 stop-index=" + std::to_string(frames_ - 1) +
               " loop=" + (again_and_again ? "true" : "false") +
               " caps=\"video/x-raw,format=GRAY8,width=" + std::to_string(width_) +
               ",height=" + std::to_string(height_) + ",framerate=" + std::to_string(rate) +
               "/1\" ! identity sleep-time=" + std::to_string(1'000'000 / rate);
    }

private:
    TempFolder folder_;
    int frames_ = 0;
    int width_ = 0;
    int height_ = 0;
};

/// Waits until something holds, at most half a minute; false when it never did.
inline bool wait_for(const std::function<bool()>& holds)
{
    const auto give_up = kiosk::Clock::now() + std::chrono::seconds(30);
    while (!holds()) {
        if (kiosk::Clock::now() > give_up)
            return false;
        std::this_thread::sleep_for(kiosk::Milliseconds{5});
    }
    return true;
}

} // namespace test
