#include "kiosk/camera/capture.h"
#include "kiosk/camera/pipeline.h"
#include "tests/kiosk/camera/fake_driver.h"
#include "tests/kiosk/camera/film.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cerrno>
#include <mutex>
#include <string>
#include <vector>

using kiosk::CameraState;
using kiosk::Capture;
using kiosk::CaptureOptions;
using kiosk::Frame;
using kiosk::Milliseconds;
using test::Film;
using test::wait_for;

namespace {

/// Runs a capture and keeps what it hands over.
class Watched {
public:
    explicit Watched(CaptureOptions options, Milliseconds looking = Milliseconds{0})
        : capture_(
              std::move(options),
              [this, looking](Frame frame) {
                  std::this_thread::sleep_for(looking);
                  const std::lock_guard lock(mutex_);
                  frames_.push_back(std::move(frame));
              },
              [this](CameraState state) {
                  const std::lock_guard lock(mutex_);
                  states_.push_back(state);
              })
    {
        capture_.start();
    }
    std::vector<Frame> frames() const
    {
        const std::lock_guard lock(mutex_);
        return frames_;
    }
    std::vector<CameraState> states() const
    {
        const std::lock_guard lock(mutex_);
        return states_;
    }
    Capture& capture() { return capture_; }

private:
    mutable std::mutex mutex_;
    std::vector<Frame> frames_;
    std::vector<CameraState> states_;
    Capture capture_; // last: its thread uses the others
};

/// A flat picture of one grey.
Frame flat(int grey, int width = 64, int height = 48)
{
    return test::draw_empty({.width = width, .height = height, .around = static_cast<double>(grey)});
}

CaptureOptions from(const std::string& source)
{
    CaptureOptions options;
    options.source = source;
    options.first_pause = Milliseconds{20};
    options.longest_pause = Milliseconds{50};
    return options;
}

constexpr Milliseconds never{3'600'000};

} // namespace

TEST_CASE("capture: frames come as the source made them")
{
    // 61 pixels a row: GStreamer keeps rows at a multiple of four, ours touch.
    Frame ramp = flat(0, 61, 16);
    for (std::size_t i = 0; i < ramp.pixels.size(); ++i)
        ramp.pixels[i] = static_cast<std::uint8_t>(i % 251);
    Film film;
    film.add(ramp, 3);
    Watched watched(from(film.source(30)));
    REQUIRE(wait_for([&] { return !watched.frames().empty(); }));
    const Frame frame = watched.frames().front();
    CHECK(frame.width == 61);
    CHECK(frame.height == 16);
    CHECK(frame.pixels == ramp.pixels);
    CHECK(frame.number == 1);
    CHECK(frame.when > kiosk::TimePoint{});
}

TEST_CASE("capture: colour and JPEG become grey, as cameras send them")
{
    struct Case {
        std::string why;
        const char* source;
    };
    const Case cases[] = {
        {"YUYV", "videotestsrc pattern=white ! video/x-raw,format=YUY2,width=320,height=240"},
        {"RGB", "videotestsrc pattern=white ! video/x-raw,format=RGB,width=320,height=240"},
        {"JPEG", "videotestsrc pattern=white ! video/x-raw,width=320,height=240 ! jpegenc"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        Watched watched(from(c.source));
        REQUIRE(wait_for([&] { return !watched.frames().empty(); }));
        const Frame frame = watched.frames().front();
        CHECK(frame.width == 320);
        CHECK(frame.height == 240);
        CHECK(frame.pixels[160 * 100] >= 230); // white, or its 235 where a camera's range is kept
    }
}

TEST_CASE("capture: who looks slowly gets the newest frame, not the next")
{
    Film film;
    for (int i = 0; i < 50; ++i)
        film.add(flat(i * 5));
    auto options = from(film.source(50));
    options.first_pause = never;
    Watched watched(std::move(options), Milliseconds{100});
    REQUIRE(wait_for([&] { return watched.capture().state() == CameraState::NoCamera; })); // the film is over
    const auto frames = watched.frames();
    REQUIRE(frames.size() >= 2);
    CHECK(frames.size() < 40); // of 50 in one second, at ten a second; a queue would have handed over all
    for (std::size_t i = 1; i < frames.size(); ++i)
        CHECK(frames[i].pixels[0] > frames[i - 1].pixels[0]);
    CHECK(frames.back().pixels[0] >= 100);
}

TEST_CASE("capture: no camera is a state, not an end")
{
    for (const char* source :
         {"no-such-element", "v4l2src device=/dev/no-such-camera", "filesrc location=/no/such/file"}) {
        CAPTURE(source);
        Watched watched(from(source));
        CHECK(wait_for([&] { return watched.capture().state() == CameraState::NoCamera; }));
        std::this_thread::sleep_for(Milliseconds{150}); // some more tries
        watched.capture().stop();
        CHECK(watched.capture().state() == CameraState::Off);
        CHECK(watched.states() == std::vector{CameraState::Starting, CameraState::NoCamera, CameraState::Off});
        CHECK(watched.frames().empty());
    }
    CaptureOptions named;
    named.device = "/dev/no \"such\\ camera";
    Watched watched(named);
    CHECK(wait_for([&] { return watched.capture().state() == CameraState::NoCamera; }));
}

TEST_CASE("capture: a pulled cable and a camera put back are survived, again and again")
{
    Film film;
    film.add(flat(100), 2);
    // After ten buffers the element says ERROR, as a camera does that is pulled out; the next pipeline works again.
    Watched watched(from(film.source(100, true) + " ! identity error-after=10"));
    const auto times_gone = [&] { return std::ranges::count(watched.states(), CameraState::NoCamera); };
    CHECK(wait_for([&] { return times_gone() >= 3; }));
    watched.capture().stop();
    const auto states = watched.states();
    CHECK(states[0] == CameraState::Starting);
    for (std::size_t i = 1; i + 1 < states.size(); ++i)
        CHECK(states[i] == (i % 2 == 1 ? CameraState::Running : CameraState::NoCamera));
    for (std::size_t i = 1; i < watched.frames().size(); ++i) // the count goes on, also over a new pipeline
        CHECK(watched.frames()[i].number == watched.frames()[i - 1].number + 1);
}

// Only the source element is another; all behind it is what a camera gets.
TEST_CASE("capture: what is no picture is told apart from no camera")
{
    struct Case {
        std::string why;
        const char* source;
    };
    const Case cases[] = {
        {"bytes of no kind", "fakesrc sizetype=fixed sizemax=5000 filltype=zero"},
        {"sound", "audiotestsrc is-live=true"},
        {"JPEG that is none", "fakesrc sizetype=fixed sizemax=5000 filltype=zero ! image/jpeg,width=640,height=480"},
        {"caps that the source does not have",
         "fakesrc ! capssetter replace=true caps=\"video/x-raw,format=NO_SUCH_FORMAT,width=64,height=48\""},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        Watched watched(from(c.source));
        CHECK(wait_for([&] { return watched.capture().state() == CameraState::WrongFormat; }));
        CHECK(watched.frames().empty());
    }
}

TEST_CASE("capture: a device that cannot be used says why, and is taken when it can")
{
    test::FakeDriver driver;
    std::mutex mutex; // the driver is no thread's alone
    CaptureOptions options = from("");
    options.calls = driver.calls();
    options.calls.open = [&, open = options.calls.open](const std::string& path) {
        const std::lock_guard lock(mutex);
        return open(path);
    };
    Watched watched(std::move(options));
    const auto becomes = [&](CameraState state) {
        return wait_for([&] { return watched.capture().state() == state; });
    };
    const auto put = [&](int open_error) {
        const std::lock_guard lock(mutex);
        driver.devices["/dev/no-such-camera"].open_error = open_error;
    };
    CHECK(becomes(CameraState::NoCamera)); // none there
    put(EACCES);
    CHECK(becomes(CameraState::Refused));
    put(EBUSY);
    CHECK(becomes(CameraState::Busy));
    put(ENODEV);
    CHECK(becomes(CameraState::NoCamera));
}

TEST_CASE("capture: a picture is put right")
{
    Frame ramp = flat(0, 64, 48);
    for (std::size_t i = 0; i < ramp.pixels.size(); ++i)
        ramp.pixels[i] = static_cast<std::uint8_t>(i % 251);
    Film film;
    film.add(ramp, 3);
    auto options = from(film.source(30));
    options.turn = {1, true};
    Watched watched(std::move(options));
    REQUIRE(wait_for([&] { return !watched.frames().empty(); }));
    CHECK(watched.frames().front().pixels == kiosk::turned(ramp.view(), {1, true}).pixels);
    CHECK(watched.capture().width() == 48);
    CHECK(watched.capture().height() == 64);
}

TEST_CASE("capture: at rest most pictures are dropped before they are decoded")
{
    const char* const sources[] = {
        "videotestsrc is-live=true ! video/x-raw,width=64,height=48,framerate=50/1",
        "videotestsrc is-live=true ! video/x-raw,width=64,height=48,framerate=50/1 ! jpegenc",
    };
    for (const char* source : sources) {
        CAPTURE(source);
        Watched watched(from(source));
        watched.capture().take_every(Milliseconds{100});
        REQUIRE(wait_for([&] { return watched.frames().size() >= 8; }));
        const auto frames = watched.frames();
        CHECK(frames[7].when - frames[2].when >= Milliseconds{400}); // five steps of 100 ms, not of 20
        watched.capture().take_every(Milliseconds{0});
        CHECK(wait_for([&] { return watched.frames().size() >= frames.size() + 20; }));
    }
}

TEST_CASE("capture: a source that falls silent is noticed and opened again")
{
    struct Case {
        std::string why;
        std::string source;
        bool gives_frames;
    };
    const Case cases[] = {
        {"nothing from the start",
         "appsrc is-live=true caps=\"video/x-raw,format=GRAY8,width=8,height=8,framerate=1/1\"", false},
        {"a frame, then nothing for an hour", "videotestsrc is-live=true ! video/x-raw,framerate=1/3600", true},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        auto options = from(c.source);
        options.silence = Milliseconds{200};
        Watched watched(std::move(options));
        const auto stalls = [&] { return std::ranges::count(watched.states(), CameraState::Stalled); };
        CHECK(wait_for([&] { return stalls() >= (c.gives_frames ? 2 : 1); }));
        CHECK(watched.frames().empty() != c.gives_frames);
    }
}

TEST_CASE("capture: a source that no pipeline can begin with is told in GStreamer's words")
{
    CHECK_FALSE(kiosk::Pipeline::fault_of("videotestsrc num-buffers=1"));
    CHECK_FALSE(kiosk::Pipeline::fault_of("filesrc location=/nowhere")); // found out when it starts
    for (const std::string wrong : {"vdeotestsrc", "videotestsrc no-such-property=1", "videotestsrc !! identity"}) {
        CAPTURE(wrong);
        const auto fault = kiosk::Pipeline::fault_of(wrong);
        REQUIRE(fault);
        CHECK_FALSE(fault->empty());
    }
}

TEST_CASE("capture: stops while it waits, while it runs, twice, and starts again")
{
    auto options = from("no-such-element");
    options.first_pause = never;
    Watched waiting(std::move(options));
    CHECK(wait_for([&] { return waiting.capture().state() == CameraState::NoCamera; }));
    waiting.capture().stop();
    waiting.capture().stop();
    CHECK(waiting.capture().state() == CameraState::Off);

    Film film;
    film.add(flat(100), 2);
    Watched running(from(film.source(100, true)));
    CHECK(wait_for([&] { return running.capture().state() == CameraState::Running; }));
    running.capture().stop();
    const auto before = running.frames().size();
    running.capture().start();
    CHECK(wait_for([&] { return running.frames().size() > before; }));
}
