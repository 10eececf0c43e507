// One run of a GStreamer pipeline from a source to grey frames: opened, asked for frames, thrown away when it breaks.
#pragma once

#include "kiosk/camera/frame.h"

#include <memory>
#include <optional>
#include <string>

namespace kiosk {

/// What asking for a frame brought.
struct Look {
    std::optional<Frame> frame; ///< without time and number
    bool gone = false;          ///< the source said that it has ended or is broken; there will be no more
};

/// The only file pair that knows GStreamer.
class Pipeline {
public:
    /// Starts a pipeline with this beginning; null when it cannot be built or its source does not start (no camera).
    [[nodiscard]] static std::unique_ptr<Pipeline> open(const std::string& source);
    ~Pipeline();
    Pipeline(const Pipeline&) = delete;
    Pipeline& operator=(const Pipeline&) = delete;

    /// The newest frame that nobody has looked at; waits for one at most so long.
    [[nodiscard]] Look next(Milliseconds patience);

private:
    struct Parts;
    explicit Pipeline(std::unique_ptr<Parts> parts);
    std::unique_ptr<Parts> parts_;
};

/// Starts GStreamer, once for the process; false when that fails. Call it before there are other threads: where the
/// usual place for the list of plugins cannot be written, it sets GST_REGISTRY to one that can (the runtime or cache
/// folder that the session or service manager names), because without the list each start costs a search.
bool prepare_gstreamer();

/// The source for a camera: 1280 x 720 if it has that, else what it likes best.
[[nodiscard]] std::string device_source(const std::string& device);

} // namespace kiosk
