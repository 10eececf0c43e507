// One run of a GStreamer pipeline from a source to grey frames: opened, asked for frames, thrown away when it breaks.
#pragma once

#include "kiosk/camera/camera_state.h"
#include "kiosk/camera/frame.h"
#include "kiosk/camera/turned.h"

#include <memory>
#include <optional>
#include <string>

namespace kiosk {

/// What asking for a frame brought.
struct Brought {
    std::optional<Frame> frame; ///< put right; without time and number
    /// The source said that it has ended or is broken, and there will be no more: NoCamera, Busy, Refused or
    /// WrongFormat.
    std::optional<CameraState> end;
};

/// The only file pair that knows GStreamer.
class Pipeline {
public:
    /// A pipeline that runs, or why it does not.
    struct Opened {
        std::unique_ptr<Pipeline> pipeline; ///< null when it cannot be built or its source does not start
        CameraState trouble = CameraState::NoCamera;
    };
    /// Why no pipeline can have this beginning, in GStreamer's words: an element that is unknown, say. Nothing starts.
    [[nodiscard]] static std::optional<std::string> fault_of(const std::string& source);
    /// Starts a pipeline with this beginning; its frames are put right by `turn`.
    [[nodiscard]] static Opened open(const std::string& source, Turn turn = {});
    ~Pipeline();
    Pipeline(const Pipeline&) = delete;
    Pipeline& operator=(const Pipeline&) = delete;

    /// The newest frame that nobody has looked at; waits for one at most so long.
    [[nodiscard]] Brought next(Milliseconds patience);

    /// At most one frame in that time, from now on; 0: all. What comes between is dropped as the source sends it,
    /// before anything is worked out of it.
    void let_through(Milliseconds every);

private:
    struct Parts;
    explicit Pipeline(std::unique_ptr<Parts> parts);
    std::unique_ptr<Parts> parts_;
};

/// Starts GStreamer, once for the process; false when that fails. Call it before there are other threads: where the
/// usual place for the list of plugins cannot be written, it sets GST_REGISTRY to one that can (the runtime or cache
/// folder that the session or service manager names), because without the list each start costs a search.
bool prepare_gstreamer();

} // namespace kiosk
