#include "kiosk/camera/device_choice.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdint>
#include <linux/videodev2.h>
#include <string_view>
#include <utility>

namespace kiosk {
namespace {

/// A driver that never comes to an end is broken: more is not asked of it.
constexpr std::uint32_t longest_list = 64;
constexpr std::size_t most_modes = 1000;

/// An open device, closed when it goes out of scope.
class Opened {
public:
    Opened(const VideoCalls& calls, const std::string& path) : calls_(calls), descriptor_(calls.open(path)) {}
    ~Opened()
    {
        if (descriptor_ >= 0)
            calls_.close(descriptor_);
    }
    Opened(const Opened&) = delete;
    Opened& operator=(const Opened&) = delete;

    /// 0, or the errno of a failed opening.
    [[nodiscard]] int error() const { return std::max(0, -descriptor_); }
    /// 0, or the errno of the refusal.
    template<class Argument>
    [[nodiscard]] int ask(unsigned long request, Argument& argument) const
    {
        return -calls_.ask(descriptor_, request, &argument);
    }

private:
    const VideoCalls& calls_;
    int descriptor_;
};

CameraState state_for(int error)
{
    if (error == EBUSY)
        return CameraState::Busy;
    return error == EACCES || error == EPERM ? CameraState::Refused : CameraState::NoCamera;
}

/// The stream to ask about; nothing where the device gives no pictures, or takes pictures to change them.
std::optional<std::uint32_t> stream_of(const Opened& device)
{
    v4l2_capability about{};
    if (device.ask(VIDIOC_QUERYCAP, about) != 0)
        return std::nullopt;
    const std::uint32_t can = (about.capabilities & V4L2_CAP_DEVICE_CAPS) != 0 ? about.device_caps : about.capabilities;
    if ((can & (V4L2_CAP_VIDEO_M2M | V4L2_CAP_VIDEO_M2M_MPLANE)) != 0)
        return std::nullopt;
    if ((can & V4L2_CAP_VIDEO_CAPTURE) != 0)
        return V4L2_BUF_TYPE_VIDEO_CAPTURE;
    if ((can & V4L2_CAP_VIDEO_CAPTURE_MPLANE) != 0)
        return V4L2_BUF_TYPE_VIDEO_CAPTURE_MPLANE;
    return std::nullopt;
}

/// GStreamer's name of the format, empty for JPEG; nothing for one that we do not read.
std::optional<std::string> format_name(std::uint32_t fourcc)
{
    static constexpr std::pair<std::uint32_t, std::string_view> names[] = {
        {V4L2_PIX_FMT_MJPEG, ""},     {V4L2_PIX_FMT_JPEG, ""},       {V4L2_PIX_FMT_YUYV, "YUY2"},
        {V4L2_PIX_FMT_UYVY, "UYVY"},  {V4L2_PIX_FMT_YVYU, "YVYU"},   {V4L2_PIX_FMT_NV12, "NV12"},
        {V4L2_PIX_FMT_NV21, "NV21"},  {V4L2_PIX_FMT_YUV420, "I420"}, {V4L2_PIX_FMT_YVU420, "YV12"},
        {V4L2_PIX_FMT_GREY, "GRAY8"}, {V4L2_PIX_FMT_RGB24, "RGB"},   {V4L2_PIX_FMT_BGR24, "BGR"},
    };
    for (const auto& [code, name] : names)
        if (code == fourcc)
            return std::string(name);
    return std::nullopt;
}

/// Adds the mode once for each pace that the driver has for it.
void add_paces(const Opened& device, std::uint32_t fourcc, Mode mode, std::vector<Mode>& modes)
{
    const auto add = [&](const v4l2_fract& interval) {
        mode.frames = static_cast<int>(interval.denominator); // the driver tells seconds for a frame
        mode.seconds = std::max(1, static_cast<int>(interval.numerator));
        modes.push_back(mode);
    };
    v4l2_frmivalenum pace{};
    pace.pixel_format = fourcc;
    pace.width = static_cast<std::uint32_t>(mode.width);
    pace.height = static_cast<std::uint32_t>(mode.height);
    for (; pace.index < longest_list && device.ask(VIDIOC_ENUM_FRAMEINTERVALS, pace) == 0; ++pace.index) {
        if (pace.type == V4L2_FRMIVAL_TYPE_DISCRETE) {
            add(pace.discrete);
            continue;
        }
        add(pace.stepwise.min); // the shortest time; a range stands alone
        return;
    }
    if (pace.index == 0)
        modes.push_back(mode);
}

/// Sizes to ask for where the driver has a range of them.
void add_range(const Opened& device, std::uint32_t fourcc, const std::string& name, const v4l2_frmsize_stepwise& range,
               std::vector<Mode>& modes)
{
    const std::array<std::pair<std::uint32_t, std::uint32_t>, 4> wanted{
        {{640, 480}, {1280, 720}, {1920, 1080}, {range.max_width, range.max_height}}};
    const auto fits = [](std::uint32_t value, std::uint32_t low, std::uint32_t high, std::uint32_t step) {
        return value >= low && value <= high && (step <= 1 || (value - low) % step == 0);
    };
    for (const auto& [width, height] : wanted)
        if (fits(width, range.min_width, range.max_width, range.step_width) &&
            fits(height, range.min_height, range.max_height, range.step_height))
            add_paces(device, fourcc, {name, static_cast<int>(width), static_cast<int>(height)}, modes);
}

void add_sizes(const Opened& device, std::uint32_t fourcc, const std::string& name, std::vector<Mode>& modes)
{
    v4l2_frmsizeenum size{};
    size.pixel_format = fourcc;
    for (; size.index < longest_list && modes.size() < most_modes && device.ask(VIDIOC_ENUM_FRAMESIZES, size) == 0;
         ++size.index) {
        if (size.type != V4L2_FRMSIZE_TYPE_DISCRETE)
            return add_range(device, fourcc, name, size.stepwise, modes);
        add_paces(device, fourcc, {name, static_cast<int>(size.discrete.width), static_cast<int>(size.discrete.height)},
                  modes);
    }
}

/// Adds the modes that we can use, and says whether the device has formats at all, and one of ours. A driver may have
/// one of ours and not say in which sizes.
CameraState add_formats(const Opened& device, std::uint32_t stream, std::vector<Mode>& modes)
{
    v4l2_fmtdesc format{};
    format.type = stream;
    auto state = CameraState::NoCamera; // a second device file that lists nothing gives nothing
    for (; format.index < longest_list && device.ask(VIDIOC_ENUM_FMT, format) == 0; ++format.index) {
        const auto name = format_name(format.pixelformat);
        if (name)
            add_sizes(device, format.pixelformat, *name, modes);
        if (name || state == CameraState::NoCamera)
            state = name ? CameraState::Running : CameraState::WrongFormat;
    }
    return state;
}

/// Whether another program takes pictures from it: opening works even then. Asking for no buffers at all changes
/// nothing for whoever holds them, and is refused.
bool is_busy(const Opened& device, std::uint32_t stream)
{
    v4l2_requestbuffers none{};
    none.type = stream;
    none.memory = V4L2_MEMORY_MMAP;
    return device.ask(VIDIOC_REQBUFS, none) == EBUSY;
}

bool has_control(const Opened& device, std::uint32_t id)
{
    v4l2_queryctrl about{};
    about.id = id;
    constexpr std::uint32_t no_use = V4L2_CTRL_FLAG_DISABLED | V4L2_CTRL_FLAG_READ_ONLY;
    return device.ask(VIDIOC_QUERYCTRL, about) == 0 && (about.flags & no_use) == 0;
}

bool set_control(const Opened& device, std::uint32_t id, std::int32_t value)
{
    v4l2_control control{};
    control.id = id;
    control.value = value;
    return device.ask(VIDIOC_S_CTRL, control) == 0;
}

/// Sets a menu to the first of these entries that it has.
template<std::size_t N>
bool set_menu(const Opened& device, std::uint32_t id, const std::array<std::uint32_t, N>& wanted)
{
    if (!has_control(device, id))
        return false;
    for (const std::uint32_t entry : wanted) {
        v4l2_querymenu menu{};
        menu.id = id;
        menu.index = entry;
        if (device.ask(VIDIOC_QUERYMENU, menu) == 0 && set_control(device, id, static_cast<std::int32_t>(entry)))
            return true;
    }
    return false;
}

bool set_switch(const Opened& device, std::uint32_t id, bool on)
{
    return has_control(device, id) && set_control(device, id, on ? 1 : 0);
}

std::string quoted(const std::string& text)
{
    std::string out;
    for (const char c : text) {
        if (c == '"' || c == '\\')
            out += '\\';
        out += c;
    }
    return "\"" + out + "\"";
}

/// First the mode that we chose; then, should driver and GStreamer not agree on it, whatever they agree on.
void add_sources(const Device& device, SourceChoice& choice)
{
    const std::string source = "v4l2src device=" + quoted(device.path) + " ! capsfilter caps=";
    if (const auto mode = best_mode(device.modes))
        choice.sources.push_back(source + quoted(caps_of(*mode)));
    choice.sources.push_back(source + quoted("image/jpeg,width=1280,height=720;video/x-raw,width=1280,height=720;"
                                             "image/jpeg;video/x-raw"));
    choice.devices.resize(choice.sources.size(), device.path);
}

/// Which trouble to tell of when there are several: the one about which something can be done.
CameraState worth_telling(const std::vector<Device>& devices)
{
    for (const auto state : {CameraState::Refused, CameraState::Busy, CameraState::WrongFormat})
        if (std::ranges::count(devices, state, &Device::state) > 0)
            return state;
    return CameraState::NoCamera;
}

} // namespace

Device look_at_device(const VideoCalls& calls, const std::string& path)
{
    const Opened device(calls, path);
    if (device.error() != 0)
        return {path, state_for(device.error()), {}};
    const auto stream = stream_of(device);
    if (!stream)
        return {path, CameraState::NoCamera, {}};
    Device found{path, CameraState::NoCamera, {}};
    found.state = add_formats(device, *stream, found.modes);
    if (found.state == CameraState::Running && is_busy(device, *stream))
        found.state = CameraState::Busy;
    return found;
}

int set_controls(const VideoCalls& calls, const std::string& path, int power_line_hz)
{
    const Opened device(calls, path);
    if (device.error() != 0)
        return 0;
    // Cameras have one of the two that expose by themselves; with a fixed lens both mean the same.
    const bool exposure = set_menu(device, V4L2_CID_EXPOSURE_AUTO,
                                   std::array<std::uint32_t, 2>{V4L2_EXPOSURE_AUTO, V4L2_EXPOSURE_APERTURE_PRIORITY});
    const bool shorter = set_switch(device, V4L2_CID_EXPOSURE_AUTO_PRIORITY, false);
    const bool focus = set_switch(device, V4L2_CID_FOCUS_AUTO, true);
    const std::uint32_t lamps = power_line_hz == 50   ? V4L2_CID_POWER_LINE_FREQUENCY_50HZ
                                : power_line_hz == 60 ? V4L2_CID_POWER_LINE_FREQUENCY_60HZ
                                                      : V4L2_CID_POWER_LINE_FREQUENCY_AUTO;
    const bool flicker = set_menu(device, V4L2_CID_POWER_LINE_FREQUENCY, std::array<std::uint32_t, 1>{lamps});
    return int{exposure} + int{shorter} + int{focus} + int{flicker};
}

SourceChoice choose_sources(const VideoCalls& calls, const std::string& device)
{
    std::vector<Device> devices;
    for (const auto& path : device.empty() ? calls.list() : std::vector{device})
        devices.push_back(look_at_device(calls, path));
    SourceChoice choice;
    for (const bool enough : {true, false})
        for (const auto& one : devices) {
            const auto mode = best_mode(one.modes);
            if (one.state == CameraState::Running && enough == (mode && has_enough_pixels(mode->width, mode->height)))
                add_sources(one, choice);
        }
    choice.trouble = worth_telling(devices);
    return choice;
}

} // namespace kiosk
