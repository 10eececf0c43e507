#include "kiosk/camera/device_choice.h"
#include "tests/kiosk/camera/fake_driver.h"

#include <doctest/doctest.h>

#include <cerrno>
#include <linux/videodev2.h>
#include <string>
#include <vector>

using kiosk::CameraState;
using kiosk::Mode;
using test::FakeDevice;
using test::FakeDriver;

namespace {

constexpr auto jpeg = V4L2_PIX_FMT_MJPEG;
constexpr auto yuyv = V4L2_PIX_FMT_YUYV;

/// As most USB cameras are: large pictures as JPEG, small ones raw too.
FakeDevice camera()
{
    FakeDevice device;
    device.capabilities = V4L2_CAP_VIDEO_CAPTURE | V4L2_CAP_STREAMING;
    device.formats = {jpeg, yuyv};
    device.sizes = {{jpeg, 640, 480, {{1, 30}}},
                    {jpeg, 1280, 720, {{1, 30}, {1, 15}}},
                    {yuyv, 640, 480, {{1, 30}}},
                    {yuyv, 1280, 720, {{1, 10}}}};
    return device;
}

FakeDevice small_camera()
{
    FakeDevice device = camera();
    device.formats = {yuyv};
    device.sizes = {{yuyv, 320, 240, {{1, 30}}}, {yuyv, 640, 480, {{1, 30}}}};
    return device;
}

/// The second device file of a camera: numbers about its pictures.
FakeDevice numbers()
{
    FakeDevice device;
    device.capabilities = V4L2_CAP_META_CAPTURE | V4L2_CAP_STREAMING;
    return device;
}

std::string joined(const std::vector<std::string>& lines)
{
    std::string all;
    for (const auto& line : lines)
        all += line + "\n";
    return all;
}

const std::string whatever = "image/jpeg,width=1280,height=720;video/x-raw,width=1280,height=720;"
                             "image/jpeg;video/x-raw\"\n";

} // namespace

TEST_CASE("device choice: a camera's modes, with every pace")
{
    FakeDriver driver;
    driver.devices["/dev/video0"] = camera();
    const auto found = kiosk::look_at_device(driver.calls(), "/dev/video0");
    CHECK(found.state == CameraState::Running);
    CHECK(found.modes == std::vector<Mode>{{"", 640, 480, 30},
                                           {"", 1280, 720, 30},
                                           {"", 1280, 720, 15},
                                           {"YUY2", 640, 480, 30},
                                           {"YUY2", 1280, 720, 10}});
    CHECK(driver.open == 0);
}

TEST_CASE("device choice: odd drivers")
{
    FakeDriver driver;
    FakeDevice& device = driver.devices["/dev/video0"] = camera();
    const auto modes = [&] { return kiosk::look_at_device(driver.calls(), "/dev/video0").modes; };

    device.sizes = {{jpeg, 32, 32, {{1, 30}}, 2048, 1536}}; // any size in steps of 16
    CHECK(modes() == std::vector<Mode>{{"", 640, 480, 30}, {"", 1280, 720, 30}, {"", 2048, 1536, 30}});
    // 1920 x 1080 is none of its steps: 1080 - 32 is 65.5 times 16

    device.sizes = {{jpeg, 1280, 720, {}}}; // no word of its pace
    CHECK(modes() == std::vector<Mode>{{"", 1280, 720, 0}});

    device.capabilities = V4L2_CAP_VIDEO_CAPTURE_MPLANE;
    CHECK(modes().size() == 1);

    device = camera();
    device.endless = true; // as if it began again and again
    CHECK(modes().size() < 2000);
    CHECK(kiosk::best_mode(modes()) == Mode{"", 640, 480, 30});
}

// errno of open and ioctl: the kernel's Video for Linux API, "open()", "VIDIOC_REQBUFS"; open(2).
TEST_CASE("device choice: why a device cannot be used")
{
    struct Case {
        const char* why;
        void (*change)(FakeDevice&);
        CameraState state;
    };
    const Case cases[] = {
        {"nothing is wrong", [](FakeDevice&) {}, CameraState::Running},
        {"no permission", [](FakeDevice& d) { d.open_error = EACCES; }, CameraState::Refused},
        {"no permission, said otherwise", [](FakeDevice& d) { d.open_error = EPERM; }, CameraState::Refused},
        {"another program has it alone", [](FakeDevice& d) { d.open_error = EBUSY; }, CameraState::Busy},
        {"another program takes pictures", [](FakeDevice& d) { d.busy = true; }, CameraState::Busy},
        {"just unplugged", [](FakeDevice& d) { d.open_error = ENODEV; }, CameraState::NoCamera},
        {"numbers, no pictures", [](FakeDevice& d) { d = numbers(); }, CameraState::NoCamera},
        {"lists nothing", [](FakeDevice& d) { d.formats.clear(); }, CameraState::NoCamera},
        {"takes pictures to change them", [](FakeDevice& d) { d.capabilities |= V4L2_CAP_VIDEO_M2M; },
         CameraState::NoCamera},
        {"a format that we do not read",
         [](FakeDevice& d) {
             d.formats = {V4L2_PIX_FMT_H264, V4L2_PIX_FMT_SBGGR8};
         },
         CameraState::WrongFormat},
        {"one of ours among them",
         [](FakeDevice& d) {
             d.formats = {V4L2_PIX_FMT_H264, jpeg, V4L2_PIX_FMT_HEVC};
         },
         CameraState::Running},
        {"one of ours, in sizes that it keeps to itself", [](FakeDevice& d) { d.sizes.clear(); }, CameraState::Running},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        FakeDriver driver;
        c.change(driver.devices["/dev/video0"] = camera());
        CHECK(kiosk::look_at_device(driver.calls(), "/dev/video0").state == c.state);
        CHECK(driver.open == 0);
        const auto choice = kiosk::choose_sources(driver.calls(), "");
        CHECK(choice.sources.empty() == (c.state != CameraState::Running));
        if (choice.sources.empty())
            CHECK(choice.trouble == c.state);
    }
}

TEST_CASE("device choice: the best mode, then whatever it likes, then the next camera")
{
    FakeDriver driver;
    CHECK(kiosk::choose_sources(driver.calls(), "").sources.empty());
    CHECK(kiosk::choose_sources(driver.calls(), "").trouble == CameraState::NoCamera);

    driver.devices["/dev/video0"] = small_camera();
    driver.devices["/dev/video1"] = numbers();
    driver.devices["/dev/video2"] = camera();
    driver.devices["/dev/video3"] = numbers();
    const auto choice = kiosk::choose_sources(driver.calls(), "");
    const std::string zero = "v4l2src device=\"/dev/video0\" ! capsfilter caps=\"";
    const std::string two = "v4l2src device=\"/dev/video2\" ! capsfilter caps=\"";
    CHECK(joined(choice.sources) == two + "image/jpeg,width=1280,height=720,framerate=30/1\"\n" + two + whatever +
                                        zero + "video/x-raw,format=YUY2,width=640,height=480,framerate=30/1\"\n" +
                                        zero + whatever);
    CHECK(joined(choice.devices) == "/dev/video2\n/dev/video2\n/dev/video0\n/dev/video0\n");

    const auto named = kiosk::choose_sources(driver.calls(), "/dev/video0");
    CHECK(joined(named.sources) ==
          zero + "video/x-raw,format=YUY2,width=640,height=480,framerate=30/1\"\n" + zero + whatever);
    CHECK(kiosk::choose_sources(driver.calls(), "/dev/video1").trouble == CameraState::NoCamera);
    CHECK(kiosk::choose_sources(driver.calls(), "/dev/video9").trouble == CameraState::NoCamera);

    driver.devices["/dev/video2"].busy = true; // the other one is there
    CHECK(kiosk::choose_sources(driver.calls(), "").devices.front() == "/dev/video0");
    driver.devices["/dev/video0"].open_error = EACCES;
    CHECK(kiosk::choose_sources(driver.calls(), "").trouble ==
          CameraState::Refused); // something can be done about both
}

TEST_CASE("device choice: a device file with an odd name stays one word of the pipeline")
{
    FakeDriver driver;
    driver.devices["/dev/a \"b\\c"] = small_camera();
    CHECK(kiosk::choose_sources(driver.calls(), "")
              .sources.front()
              .starts_with("v4l2src device=\"/dev/a \\\"b\\\\c\" !"));
}

// Ids and values: the kernel's "User controls" (power line frequency) and "Camera control reference" (the others).
TEST_CASE("device choice: focus and exposure are set where the driver lets it")
{
    using Controls = std::map<std::uint32_t, std::int32_t>;
    FakeDriver driver;
    FakeDevice& device = driver.devices["/dev/video0"] = camera();
    const auto set = [&](int hz) {
        device.set.clear();
        const int count = kiosk::set_controls(driver.calls(), "/dev/video0", hz);
        CHECK(static_cast<std::size_t>(count) == device.set.size());
        CHECK(driver.open == 0);
        return device.set;
    };
    CHECK(set(50) == Controls{}); // a fixed lens, and nothing to choose

    device.controls = {{V4L2_CID_EXPOSURE_AUTO, {V4L2_EXPOSURE_MANUAL, V4L2_EXPOSURE_APERTURE_PRIORITY}},
                       {V4L2_CID_EXPOSURE_AUTO_PRIORITY, {0, 1}},
                       {V4L2_CID_FOCUS_AUTO, {0, 1}},
                       {V4L2_CID_POWER_LINE_FREQUENCY, {0, 1, 2}}}; // as USB cameras have them
    const Controls usual{{V4L2_CID_EXPOSURE_AUTO, V4L2_EXPOSURE_APERTURE_PRIORITY},
                         {V4L2_CID_EXPOSURE_AUTO_PRIORITY, 0},
                         {V4L2_CID_FOCUS_AUTO, 1}};
    CHECK(set(0) == usual); // no automatic frequency: as it was
    Controls lamps = usual;
    lamps[V4L2_CID_POWER_LINE_FREQUENCY] = V4L2_CID_POWER_LINE_FREQUENCY_50HZ;
    CHECK(set(50) == lamps);
    lamps[V4L2_CID_POWER_LINE_FREQUENCY] = V4L2_CID_POWER_LINE_FREQUENCY_60HZ;
    CHECK(set(60) == lamps);

    device.controls = {{V4L2_CID_EXPOSURE_AUTO, {0, 1, 3}}, {V4L2_CID_POWER_LINE_FREQUENCY, {0, 1, 2, 3}}};
    CHECK(set(0) == Controls{{V4L2_CID_EXPOSURE_AUTO, V4L2_EXPOSURE_AUTO},
                             {V4L2_CID_POWER_LINE_FREQUENCY, V4L2_CID_POWER_LINE_FREQUENCY_AUTO}});

    device.controls = {{V4L2_CID_EXPOSURE_AUTO, {V4L2_EXPOSURE_MANUAL}}};
    CHECK(set(0) == Controls{}); // by hand only: by hand it stays
    CHECK(kiosk::set_controls(driver.calls(), "/dev/video9", 0) == 0);
}
