#include "kiosk/camera/attention.h"
#include "tests/support/barcode_frames.h"

#include <doctest/doctest.h>

#include <string>

using kiosk::Attention;
using kiosk::Frame;
using kiosk::Milliseconds;
using kiosk::Thumb;
using kiosk::thumb_of;
using kiosk::TimePoint;

namespace {

Thumb empty(double grey = 190, double noise = 0, std::uint64_t seed = 1)
{
    return thumb_of(test::draw_empty({.noise = noise, .around = grey, .seed = seed}).view());
}

Thumb package(double module = 2.5, double degrees = 0)
{
    return thumb_of(
        test::draw(
            {.symbology = core::Symbology::Ean13, .digits = "9521234543213", .module = module, .degrees = degrees})
            .view());
}

/// Time that passes while frames come, 33 ms apart when awake, as wanted when not.
class Watch {
public:
    /// Shows the picture for so long; returns how many frames were read.
    int show(const Thumb& thumb, Milliseconds time, const char* digits = nullptr)
    {
        int reads = 0;
        for (const auto until = now_ + time; now_ < until;) {
            if (attention_.wants(thumb, now_)) {
                ++reads;
                attention_.has_read(digits ? std::optional<std::string>(digits) : std::nullopt, now_);
            }
            ++frames;
            now_ += std::max(Milliseconds{33}, attention_.pace(now_));
        }
        return reads;
    }
    [[nodiscard]] bool awake() const { return attention_.awake(now_); }
    int frames = 0;

private:
    Attention attention_;
    TimePoint now_{std::chrono::hours{1}};
};

} // namespace

TEST_CASE("attention: what counts as another picture")
{
    const int enough = kiosk::AttentionLimits{}.moved_cells;
    struct Case {
        const char* why;
        Thumb before, after;
        bool other;
    };
    const Case cases[] = {
        {"the same", empty(), empty(), false},
        {"grain of poor light", empty(190, 12, 1), empty(190, 12, 2), false},
        {"a cloud before the sun", empty(190), empty(150), false},
        {"a package comes", empty(), package(), true},
        {"a small one", empty(), package(1.3), true},
        {"a package is turned", package(), package(2.5, 8), true},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK((kiosk::cells_changed(c.before, c.after) >= enough) == c.other);
        CHECK((kiosk::cells_changed(c.after, c.before) >= enough) == c.other);
    }
}

TEST_CASE("attention: a picture that stands still is glanced at, and read once a second")
{
    Watch watch;
    CHECK(watch.show(empty(), Milliseconds{3000}) >= 80); // first it looks hard: a package may lie there already
    CHECK_FALSE(watch.awake());
    watch.frames = 0;
    const int reads = watch.show(empty(190), Milliseconds{10'000});
    CHECK(watch.frames == 50);
    CHECK(reads >= 9);
    CHECK(reads <= 11);
}

TEST_CASE("attention: what moves or creeps wakes it")
{
    Watch watch;
    watch.show(empty(), Milliseconds{5000});
    CHECK(watch.show(package(), Milliseconds{1000}) >= 25);
    watch.show(package(), Milliseconds{5000});
    CHECK_FALSE(watch.awake());
    Thumb creeping = package();
    int reads = 0;
    for (int step = 0; step < 20; ++step) { // three grey levels in each fifth of a second, in a part of the picture
        for (std::size_t i = 0; i < 60; ++i)
            creeping.cells[i] = static_cast<std::uint8_t>(creeping.cells[i] - 3);
        reads += watch.show(creeping, Milliseconds{200});
    }
    CHECK(reads > 40);
}

TEST_CASE("attention: bars that lie there are read hard once, and then left alone")
{
    Watch watch;
    watch.show(package(), Milliseconds{6000}, "9521234543213");
    CHECK_FALSE(watch.awake()); // it lies there; nobody needs it read thirty times a second
    CHECK(watch.show(package(), Milliseconds{10'000}, "9521234543213") <= 11);
    watch.show(package(), Milliseconds{1000}, "96385074"); // other bars were not seen until now
    CHECK(watch.awake());
    watch.show(package(), Milliseconds{5000}, "96385074");
    CHECK_FALSE(watch.awake());
    watch.show(empty(), Milliseconds{100});
    CHECK(watch.awake());
}

TEST_CASE("attention: black is what a cap over the lens shows, not a dark room")
{
    CHECK(kiosk::is_black(empty(0)));
    CHECK(kiosk::is_black(empty(16, 6))); // video black, with grain
    Thumb dark = empty(20);
    dark.cells[77] = 60; // a lamp behind a door
    CHECK_FALSE(kiosk::is_black(dark));
    CHECK_FALSE(kiosk::is_black(empty(190)));
}

TEST_CASE("attention: any picture makes a thumb")
{
    CHECK(thumb_of({}) == Thumb{});
    Frame tiny;
    tiny.width = Thumb::columns - 1;
    tiny.height = Thumb::rows;
    tiny.pixels.assign(static_cast<std::size_t>(tiny.width * tiny.height), 200);
    CHECK(thumb_of(tiny.view()) == Thumb{});
    ++tiny.width;
    tiny.pixels.assign(static_cast<std::size_t>(tiny.width * tiny.height), 200);
    CHECK(thumb_of(tiny.view()).cells[100] == 200);
}
