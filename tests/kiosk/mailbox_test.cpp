#include "kiosk/mailbox.h"

#include <doctest/doctest.h>

#include <memory>
#include <thread>

using kiosk::Every;
using kiosk::Milliseconds;
using kiosk::Newest;

TEST_CASE("mailbox: the newest wins, and is given once")
{
    Newest<std::unique_ptr<int>> box; // what cannot be copied can be handed over
    CHECK_FALSE(box.take());
    box.put(std::make_unique<int>(1));
    box.put(std::make_unique<int>(2));
    CHECK(**box.take() == 2);
    CHECK_FALSE(box.take());
    CHECK_FALSE(box.take_within(Milliseconds{1}));
}

TEST_CASE("mailbox: who waits for the newest is woken, never given an older one after a newer")
{
    constexpr int last = 20'000;
    Newest<int> box;
    std::jthread putter([&box] {
        for (int i = 1; i <= last; ++i)
            box.put(i);
    });
    int seen = 0;
    while (seen < last) {
        const auto value = box.take_within(Milliseconds{10'000});
        REQUIRE(value);
        REQUIRE(*value > seen);
        seen = *value;
    }
    CHECK(seen == last);
}

TEST_CASE("mailbox: everything put in by several threads comes out once, each thread's in its order")
{
    constexpr int threads = 3;
    constexpr int each = 5'000;
    Every<std::pair<int, int>> box(threads * each);
    std::vector<int> next(threads, 0);
    int taken = 0;
    {
        std::vector<std::jthread> putters;
        for (int t = 0; t < threads; ++t)
            putters.emplace_back([&box, t] {
                for (int i = 0; i < each; ++i)
                    if (!box.put({t, i}))
                        return; // then too few come out, and the test says so below
            });
        const auto give_up = kiosk::Clock::now() + std::chrono::seconds(30);
        while (taken < threads * each && kiosk::Clock::now() < give_up)
            for (const auto& [thread, number] : box.take_all()) {
                REQUIRE(number == next[static_cast<std::size_t>(thread)]++);
                ++taken;
            }
    }
    CHECK(taken == threads * each);
    CHECK(box.refused() == 0);
}

TEST_CASE("mailbox: a full box refuses the new one, keeps the old ones and counts")
{
    Every<int> box(2);
    CHECK(box.put(1));
    CHECK(box.put(2));
    CHECK_FALSE(box.put(3));
    CHECK(box.refused() == 1);
    CHECK(box.take_all() == std::vector{1, 2});
    CHECK(box.put(4));
    CHECK(box.take_all() == std::vector{4});
    CHECK(box.take_all().empty());
}
