#include "kiosk/camera/pipeline.h"

#include <gst/app/gstappsink.h>
#include <gst/gst.h>
#include <gst/video/video.h>

#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <unistd.h>

namespace kiosk {
namespace {

/// What stands behind every source. The sink keeps one frame, the newest: who asks late gets a fresh picture.
constexpr const char* behind_source = " ! decodebin ! videoconvert ! video/x-raw,format=GRAY8"
                                      " ! appsink name=frames sync=false drop=true max-buffers=1";

template<class Thing>
struct Unref {
    void operator()(Thing* thing) const { gst_object_unref(thing); }
};
using Element = std::unique_ptr<GstElement, Unref<GstElement>>;
using Bus = std::unique_ptr<GstBus, Unref<GstBus>>;

struct SampleUnref {
    void operator()(GstSample* sample) const { gst_sample_unref(sample); }
};
using Sample = std::unique_ptr<GstSample, SampleUnref>;

/// The picture of a sample with rows that touch; nothing when it is no grey picture.
std::optional<Frame> frame_of(GstSample* sample)
{
    GstVideoInfo info;
    GstCaps* caps = gst_sample_get_caps(sample);
    GstBuffer* buffer = gst_sample_get_buffer(sample);
    if (!caps || !buffer || !gst_video_info_from_caps(&info, caps))
        return std::nullopt;
    GstVideoFrame mapped;
    if (!gst_video_frame_map(&mapped, &info, buffer, GST_MAP_READ))
        return std::nullopt;
    Frame frame;
    frame.width = GST_VIDEO_FRAME_WIDTH(&mapped);
    frame.height = GST_VIDEO_FRAME_HEIGHT(&mapped);
    const auto row_bytes = static_cast<std::size_t>(frame.width);
    frame.pixels.resize(row_bytes * static_cast<std::size_t>(frame.height));
    const auto* from = static_cast<const std::uint8_t*>(GST_VIDEO_FRAME_PLANE_DATA(&mapped, 0));
    const std::ptrdiff_t stride = GST_VIDEO_FRAME_PLANE_STRIDE(&mapped, 0);
    for (int y = 0; y < frame.height; ++y)
        std::memcpy(frame.pixels.data() + row_bytes * static_cast<std::size_t>(y), from + stride * y, row_bytes);
    gst_video_frame_unmap(&mapped);
    return frame;
}

bool can_write_in(const std::filesystem::path& folder)
{
    std::error_code ignored;
    std::filesystem::create_directories(folder, ignored);
    return access(folder.c_str(), W_OK | X_OK) == 0;
}

std::filesystem::path usual_registry_folder()
{
    const char* cache = std::getenv("XDG_CACHE_HOME");
    if (cache && *cache)
        return std::filesystem::path(cache) / "gstreamer-1.0";
    const char* home = std::getenv("HOME");
    return std::filesystem::path(home ? home : "/") / ".cache" / "gstreamer-1.0";
}

/// Only folders that belong to this user alone: the list names code to load, so /tmp is no place for it.
void choose_registry()
{
    if (std::getenv("GST_REGISTRY") || std::getenv("GST_REGISTRY_1_0") || can_write_in(usual_registry_folder()))
        return;
    for (const char* name : {"CACHE_DIRECTORY", "RUNTIME_DIRECTORY", "XDG_RUNTIME_DIR"}) {
        const char* folder = std::getenv(name);
        if (folder && *folder && can_write_in(folder)) {
            setenv("GST_REGISTRY", (std::filesystem::path(folder) / "gstreamer-registry.bin").c_str(), 1);
            return;
        }
    }
}

} // namespace

/// The pipeline and what is asked of it again and again.
struct Pipeline::Parts {
    Element pipeline;
    Element sink;
    Bus bus;
};

Pipeline::Pipeline(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}

Pipeline::~Pipeline()
{
    gst_element_set_state(parts_->pipeline.get(), GST_STATE_NULL);
}

std::unique_ptr<Pipeline> Pipeline::open(const std::string& source)
{
    if (!prepare_gstreamer())
        return nullptr;
    GError* error = nullptr;
    auto parts = std::make_unique<Parts>();
    parts->pipeline.reset(gst_parse_launch((source + behind_source).c_str(), &error));
    if (error) { // may come with half a pipeline
        g_error_free(error);
        return nullptr;
    }
    parts->sink.reset(gst_bin_get_by_name(GST_BIN(parts->pipeline.get()), "frames"));
    parts->bus.reset(gst_element_get_bus(parts->pipeline.get()));
    const auto started = gst_element_set_state(parts->pipeline.get(), GST_STATE_PLAYING);
    std::unique_ptr<Pipeline> opened(new Pipeline(std::move(parts)));
    if (started == GST_STATE_CHANGE_FAILURE)
        return nullptr;
    return opened;
}

Look Pipeline::next(Milliseconds patience)
{
    const auto nanoseconds = static_cast<GstClockTime>(patience.count()) * GST_MSECOND;
    auto* sink = GST_APP_SINK(parts_->sink.get());
    // The bus first: it knows the error behind an end. A sink at its end answers at once, so there the bus does the
    // waiting.
    const GstClockTime bus_time = gst_app_sink_is_eos(sink) ? nanoseconds : 0;
    constexpr auto ends = static_cast<GstMessageType>(GST_MESSAGE_ERROR | GST_MESSAGE_EOS);
    if (GstMessage* message = gst_bus_timed_pop_filtered(parts_->bus.get(), bus_time, ends)) {
        gst_message_unref(message);
        return {std::nullopt, true};
    }
    const Sample sample(gst_app_sink_try_pull_sample(sink, nanoseconds));
    if (!sample)
        return {};
    return {frame_of(sample.get()), false};
}

bool prepare_gstreamer()
{
    static const bool ready = [] {
        choose_registry();
        return gst_init_check(nullptr, nullptr, nullptr) == TRUE;
    }();
    return ready;
}

std::string device_source(const std::string& device)
{
    std::string quoted;
    for (const char c : device) {
        if (c == '"' || c == '\\')
            quoted += '\\';
        quoted += c;
    }
    return "v4l2src device=\"" + quoted +
           "\" ! capsfilter caps=\"image/jpeg,width=1280,height=720;video/x-raw,width=1280,height=720;"
           "image/jpeg;video/x-raw\"";
}

} // namespace kiosk
