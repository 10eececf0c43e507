#include "tests/ui/access/notes.h"
#include "ui/access/switch_scan.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <vector>

namespace {

using Time = ui::SwitchScan::Time;
using Lit = std::vector<std::size_t>;

constexpr Time pace{1000};

/// Lets so many paces pass.
void pass(ui::SwitchScan& scan, std::span<const ui::Stop> stops, Time& now, int paces)
{
    for (int i = 0; i < paces; ++i) {
        now = scan.due();
        scan.tick(stops, now);
    }
}

} // namespace

TEST_CASE("switch: lines light up in turn; the switch enters one and then chooses in it")
{
    const auto stops = ui::stops_of(test::small_screen());
    ui::SwitchScan scan(pace);
    CHECK(scan.lit(stops).empty());
    Time now{5000};
    scan.start(now);
    CHECK(scan.lit(stops) == Lit{1, 2});
    CHECK_FALSE(scan.tick(stops, now + pace)); // the first is lit twice as long
    pass(scan, stops, now, 1);
    CHECK(scan.lit(stops) == Lit{3});
    pass(scan, stops, now, 2);
    CHECK(scan.lit(stops) == Lit{1, 2});  // round and round
    CHECK_FALSE(scan.choose(stops, now)); // enters the line
    CHECK(scan.lit(stops) == Lit{1});
    pass(scan, stops, now, 1);
    CHECK(scan.lit(stops) == Lit{2});
    CHECK(scan.choose(stops, now) == std::optional<std::size_t>{2});
    CHECK(scan.lit(stops) == Lit{1, 2});
}

TEST_CASE("switch: a line of one thing is chosen at once")
{
    const auto stops = ui::stops_of(test::small_screen());
    ui::SwitchScan scan(pace);
    Time now{0};
    scan.start(now);
    pass(scan, stops, now, 1);
    CHECK(scan.choose(stops, now) == std::optional<std::size_t>{3});
}

TEST_CASE("switch: who entered a line by mistake gets out of it by waiting two rounds")
{
    const auto stops = ui::stops_of(test::small_screen());
    ui::SwitchScan scan(pace);
    Time now{0};
    scan.start(now);
    CHECK_FALSE(scan.choose(stops, now));
    pass(scan, stops, now, 4);
    CHECK(scan.lit(stops) == Lit{1, 2});
}

TEST_CASE("switch: everything on a screen can be chosen, at any pace, and nothing on an empty one")
{
    const auto stops = ui::stops_of(test::small_screen());
    for (const std::size_t wanted : {1, 2, 3, 4}) {
        ui::SwitchScan scan(Time{500});
        Time now{0};
        scan.start(now);
        std::optional<std::size_t> chosen;
        for (int step = 0; step < 20 && !chosen; ++step) {
            const auto lit = scan.lit(stops);
            if (std::ranges::count(lit, wanted) > 0 && (lit.size() > 1 || lit.front() == wanted))
                chosen = scan.choose(stops, now);
            if (!chosen && scan.lit(stops) != Lit{wanted})
                pass(scan, stops, now, 1);
        }
        CHECK(chosen == wanted);
    }
    ui::SwitchScan scan(pace);
    scan.start(Time{0});
    CHECK_FALSE(scan.choose({}, Time{1}));
    CHECK_FALSE(scan.tick({}, Time{9000}));
    scan.stop();
    CHECK_FALSE(scan.on());
}
