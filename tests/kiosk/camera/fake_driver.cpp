#include "tests/kiosk/camera/fake_driver.h"

#include <algorithm>
#include <cerrno>
#include <iterator>
#include <linux/videodev2.h>

namespace test {
namespace {

constexpr int first_descriptor = 1000;

int about(const FakeDevice& device, v4l2_capability& into)
{
    // The whole camera can more than this device file: only device_caps is about the file.
    into.capabilities = V4L2_CAP_VIDEO_CAPTURE | V4L2_CAP_META_CAPTURE | V4L2_CAP_DEVICE_CAPS;
    into.device_caps = device.capabilities;
    return 0;
}

int format(const FakeDevice& device, v4l2_fmtdesc& into)
{
    const std::uint32_t index = device.endless ? 0 : into.index;
    if (index >= device.formats.size() ||
        (into.type != V4L2_BUF_TYPE_VIDEO_CAPTURE && into.type != V4L2_BUF_TYPE_VIDEO_CAPTURE_MPLANE))
        return -EINVAL;
    into.pixelformat = device.formats[index];
    return 0;
}

int size(const FakeDevice& device, v4l2_frmsizeenum& into)
{
    std::vector<FakeSize> sizes;
    std::ranges::copy_if(device.sizes, std::back_inserter(sizes),
                         [&](const FakeSize& one) { return one.fourcc == into.pixel_format; });
    const std::uint32_t index = device.endless ? 0 : into.index;
    if (index >= sizes.size())
        return -EINVAL;
    const FakeSize& one = sizes[index];
    if (one.high == 0) {
        into.type = V4L2_FRMSIZE_TYPE_DISCRETE;
        into.discrete = {one.width, one.height};
    } else {
        into.type = V4L2_FRMSIZE_TYPE_STEPWISE;
        into.stepwise = {one.width, one.wide, 16, one.height, one.high, 16};
    }
    return 0;
}

int interval(const FakeDevice& device, v4l2_frmivalenum& into)
{
    const auto one = std::ranges::find_if(device.sizes, [&](const FakeSize& size) {
        return size.fourcc == into.pixel_format && size.width <= into.width &&
               into.width <= std::max(size.width, size.wide) && size.height <= into.height &&
               into.height <= std::max(size.height, size.high);
    });
    const std::uint32_t index = device.endless ? 0 : into.index;
    if (one == device.sizes.end() || index >= one->intervals.size())
        return -EINVAL;
    into.type = V4L2_FRMIVAL_TYPE_DISCRETE;
    into.discrete = {one->intervals[index].first, one->intervals[index].second};
    return 0;
}

int menu(const FakeDevice& device, const v4l2_querymenu& into)
{
    const auto control = device.controls.find(into.id);
    return control != device.controls.end() &&
                   std::ranges::count(control->second, static_cast<std::int32_t>(into.index)) > 0
               ? 0
               : -EINVAL;
}

int set(FakeDevice& device, const v4l2_control& into)
{
    const auto control = device.controls.find(into.id);
    if (control == device.controls.end())
        return -EINVAL;
    if (std::ranges::count(control->second, into.value) == 0)
        return -ERANGE;
    device.set[into.id] = into.value;
    return 0;
}

int answer(FakeDevice& device, unsigned long request, void* argument)
{
    switch (request) {
    case VIDIOC_QUERYCAP:
        return about(device, *static_cast<v4l2_capability*>(argument));
    case VIDIOC_ENUM_FMT:
        return format(device, *static_cast<v4l2_fmtdesc*>(argument));
    case VIDIOC_ENUM_FRAMESIZES:
        return size(device, *static_cast<v4l2_frmsizeenum*>(argument));
    case VIDIOC_ENUM_FRAMEINTERVALS:
        return interval(device, *static_cast<v4l2_frmivalenum*>(argument));
    case VIDIOC_REQBUFS:
        return device.busy ? -EBUSY : 0;
    case VIDIOC_QUERYCTRL:
        return device.controls.contains(static_cast<v4l2_queryctrl*>(argument)->id) ? 0 : -EINVAL;
    case VIDIOC_QUERYMENU:
        return menu(device, *static_cast<v4l2_querymenu*>(argument));
    case VIDIOC_S_CTRL:
        return set(device, *static_cast<v4l2_control*>(argument));
    default:
        return -ENOTTY;
    }
}

} // namespace

FakeDevice& FakeDriver::at(int descriptor)
{
    return std::next(devices.begin(), descriptor - first_descriptor)->second;
}

kiosk::VideoCalls FakeDriver::calls()
{
    kiosk::VideoCalls calls;
    calls.list = [this] {
        std::vector<std::string> paths;
        for (const auto& [path, device] : devices)
            paths.push_back(path);
        return paths;
    };
    calls.open = [this](const std::string& path) {
        const auto found = devices.find(path);
        if (found == devices.end())
            return -ENOENT;
        if (found->second.open_error != 0)
            return -found->second.open_error;
        ++open;
        return first_descriptor + static_cast<int>(std::distance(devices.begin(), found));
    };
    calls.ask = [this](int descriptor, unsigned long request, void* argument) {
        return answer(at(descriptor), request, argument);
    };
    calls.close = [this](int) { --open; };
    return calls;
}

} // namespace test
