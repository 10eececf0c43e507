#include "kiosk/camera/pipeline.h"

#include <gst/app/gstappsink.h>
#include <gst/gst.h>
#include <gst/video/video.h>

#include <algorithm>
#include <atomic>
#include <cstdlib>
#include <filesystem>
#include <string_view>
#include <unistd.h>
#include <utility>

namespace kiosk {
namespace {

/// What stands behind every source. The sink keeps one frame, the newest: who asks late gets a fresh picture.
constexpr const char* behind_source = " ! decodebin name=decoder ! videoconvert ! video/x-raw,format=GRAY8"
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

struct PadUnref {
    void operator()(GstPad* pad) const { gst_object_unref(pad); }
};
using Pad = std::unique_ptr<GstPad, PadUnref>;

struct MessageUnref {
    void operator()(GstMessage* message) const { gst_message_unref(message); }
};
using Message = std::unique_ptr<GstMessage, MessageUnref>;

/// Drops what comes too soon after what was let through. Lives in GStreamer's threads.
struct Gate {
    std::atomic<gint64> every_us{0};
    std::atomic<gint64> last_us{0};
};

/// Whether what flows here are whole pictures: part of a file must not be dropped.
bool flows_in_pictures(GstPad* pad)
{
    GstCaps* caps = gst_pad_get_current_caps(pad);
    if (!caps)
        return false;
    const std::string_view name = gst_structure_get_name(gst_caps_get_structure(caps, 0));
    const bool pictures = name == "image/jpeg" || name == "video/x-raw";
    gst_caps_unref(caps);
    return pictures;
}

GstPadProbeReturn pass(GstPad* pad, GstPadProbeInfo*, gpointer data)
{
    auto& gate = *static_cast<Gate*>(data);
    const gint64 now = g_get_monotonic_time();
    // A frame that is a little early is in time: cameras do not keep to the microsecond.
    constexpr gint64 tolerance_us = 5000;
    const gint64 every = gate.every_us;
    if (every > 0 && now - gate.last_us + tolerance_us < every && flows_in_pictures(pad))
        return GST_PAD_PROBE_DROP;
    gate.last_us = now;
    return GST_PAD_PROBE_OK;
}

bool is_one_of(const GError& error, GQuark domain, std::initializer_list<int> codes)
{
    return error.domain == domain && std::ranges::count(codes, error.code) > 0;
}

/// Whether data stopped flowing because two elements did not agree on a format, or had none in common.
bool flow_disagrees(GstMessage* message)
{
    const GstStructure* details = nullptr;
    gst_message_parse_error_details(message, &details);
    int flow = GST_FLOW_OK;
    return details && gst_structure_get_int(details, "flow-return", &flow) &&
           (flow == GST_FLOW_NOT_NEGOTIATED || flow == GST_FLOW_NOT_LINKED);
}

/// What an error or an end tells about the camera.
CameraState state_after(GstMessage* message)
{
    if (GST_MESSAGE_TYPE(message) != GST_MESSAGE_ERROR)
        return CameraState::NoCamera;
    GError* told = nullptr;
    gst_message_parse_error(message, &told, nullptr);
    const std::unique_ptr<GError, decltype(&g_error_free)> error(told, &g_error_free);
    if (is_one_of(*error, GST_RESOURCE_ERROR, {GST_RESOURCE_ERROR_BUSY}))
        return CameraState::Busy;
    if (is_one_of(*error, GST_RESOURCE_ERROR, {GST_RESOURCE_ERROR_NOT_AUTHORIZED}))
        return CameraState::Refused;
    if (is_one_of(*error, GST_CORE_ERROR,
                  {GST_CORE_ERROR_NEGOTIATION, GST_CORE_ERROR_CAPS, GST_CORE_ERROR_MISSING_PLUGIN}) ||
        is_one_of(*error, GST_STREAM_ERROR,
                  {GST_STREAM_ERROR_TYPE_NOT_FOUND, GST_STREAM_ERROR_WRONG_TYPE, GST_STREAM_ERROR_CODEC_NOT_FOUND,
                   GST_STREAM_ERROR_DECODE, GST_STREAM_ERROR_DEMUX, GST_STREAM_ERROR_FORMAT}) ||
        flow_disagrees(message))
        return CameraState::WrongFormat;
    return CameraState::NoCamera;
}

constexpr auto ends = static_cast<GstMessageType>(GST_MESSAGE_ERROR | GST_MESSAGE_EOS);

/// The picture of a sample, put right; nothing when it is no grey picture.
std::optional<Frame> frame_of(GstSample* sample, Turn turn)
{
    GstVideoInfo info;
    GstCaps* caps = gst_sample_get_caps(sample);
    GstBuffer* buffer = gst_sample_get_buffer(sample);
    if (!caps || !buffer || !gst_video_info_from_caps(&info, caps))
        return std::nullopt;
    GstVideoFrame mapped;
    if (!gst_video_frame_map(&mapped, &info, buffer, GST_MAP_READ))
        return std::nullopt;
    Frame frame = turned({static_cast<const std::uint8_t*>(GST_VIDEO_FRAME_PLANE_DATA(&mapped, 0)),
                          GST_VIDEO_FRAME_WIDTH(&mapped), GST_VIDEO_FRAME_HEIGHT(&mapped),
                          GST_VIDEO_FRAME_PLANE_STRIDE(&mapped, 0)},
                         turn);
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

/// A pipeline, or why it cannot be built.
struct Built {
    Element pipeline;
    std::optional<std::string> fault;
};

Built built(const std::string& source)
{
    GError* told = nullptr;
    Built made{Element(gst_parse_launch((source + behind_source).c_str(), &told)), {}};
    if (const std::unique_ptr<GError, decltype(&g_error_free)> error(told, &g_error_free); error) {
        made.pipeline.reset(); // may come with half a pipeline
        made.fault = error->message;
    }
    return made;
}

} // namespace

/// The pipeline and what is asked of it again and again.
struct Pipeline::Parts {
    Gate gate; ///< first: GStreamer's threads use it until the pipeline has stopped
    Element pipeline;
    Element sink;
    Bus bus;
    Turn turn;
};

Pipeline::Pipeline(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}

Pipeline::~Pipeline()
{
    gst_element_set_state(parts_->pipeline.get(), GST_STATE_NULL);
}

std::optional<std::string> Pipeline::fault_of(const std::string& source)
{
    if (!prepare_gstreamer())
        return std::nullopt; // no fault of this source
    return built(source).fault;
}

Pipeline::Opened Pipeline::open(const std::string& source, Turn turn)
{
    if (!prepare_gstreamer())
        return {};
    auto parts = std::make_unique<Parts>();
    parts->turn = turn;
    auto made = built(source);
    if (made.fault)
        return {};
    parts->pipeline = std::move(made.pipeline);
    parts->sink.reset(gst_bin_get_by_name(GST_BIN(parts->pipeline.get()), "frames"));
    parts->bus.reset(gst_element_get_bus(parts->pipeline.get()));
    const Element decoder(gst_bin_get_by_name(GST_BIN(parts->pipeline.get()), "decoder"));
    const Pad door(gst_element_get_static_pad(decoder.get(), "sink"));
    gst_pad_add_probe(door.get(), GST_PAD_PROBE_TYPE_BUFFER, pass, &parts->gate, nullptr);
    const auto started = gst_element_set_state(parts->pipeline.get(), GST_STATE_PLAYING);
    std::unique_ptr<Pipeline> opened(new Pipeline(std::move(parts)));
    if (started == GST_STATE_CHANGE_FAILURE) {
        const Message why(gst_bus_pop_filtered(opened->parts_->bus.get(), ends));
        return {nullptr, why ? state_after(why.get()) : CameraState::NoCamera};
    }
    return {std::move(opened), CameraState::Starting};
}

void Pipeline::let_through(Milliseconds every)
{
    parts_->gate.every_us = std::chrono::microseconds(every).count();
}

Brought Pipeline::next(Milliseconds patience)
{
    const auto nanoseconds = static_cast<GstClockTime>(patience.count()) * GST_MSECOND;
    auto* sink = GST_APP_SINK(parts_->sink.get());
    // The bus first: it knows the error behind an end. A sink at its end answers at once, so there the bus does the
    // waiting.
    const GstClockTime bus_time = gst_app_sink_is_eos(sink) ? nanoseconds : 0;
    if (const Message message{gst_bus_timed_pop_filtered(parts_->bus.get(), bus_time, ends)})
        return {std::nullopt, state_after(message.get())};
    const Sample sample(gst_app_sink_try_pull_sample(sink, nanoseconds));
    if (!sample)
        return {};
    return {frame_of(sample.get(), parts_->turn), std::nullopt};
}

bool prepare_gstreamer()
{
    static const bool ready = [] {
        choose_registry();
        return gst_init_check(nullptr, nullptr, nullptr) == TRUE;
    }();
    return ready;
}

} // namespace kiosk
