// What adds up and what must not compile: unlike amounts do not mix, ranges have no difference.
#include "core/figure/amount.h"
#include "core/figure/range.h"
#include "core/figure/wide.h"

#include <doctest/doctest.h>

#include <functional>
#include <type_traits>

namespace test {
namespace {

using core::Content;
using core::Count;
using core::Mass;
using core::Percent;
using core::Range;
using core::Volume;

// What must not compile is a test as well.
static_assert(std::is_invocable_v<std::plus<>, Mass, Mass>);
static_assert(std::is_invocable_v<std::minus<>, Mass, Mass>);
static_assert(std::is_invocable_v<std::multiplies<>, Mass, int>);
static_assert(std::is_invocable_v<std::less<>, Mass, Mass>);
static_assert(!std::is_invocable_v<std::plus<>, Mass, Volume>);
static_assert(!std::is_invocable_v<std::plus<>, Mass, Content>);
static_assert(!std::is_invocable_v<std::plus<>, Count, Percent>);
static_assert(!std::is_invocable_v<std::plus<>, Mass, int>);
static_assert(!std::is_invocable_v<std::less<>, Mass, Volume>);
static_assert(!std::is_invocable_v<std::equal_to<>, Mass, Volume>);
static_assert(!std::is_invocable_v<std::multiplies<>, Mass, Mass>); // crosswise products are wide.h's
static_assert(!std::is_invocable_v<std::divides<>, Mass, int>);
static_assert(!std::is_convertible_v<int, Mass>);
static_assert(!std::is_constructible_v<Mass, int>); // no unit is ever left unsaid
static_assert(!std::is_constructible_v<Mass, Volume>);

static_assert(std::is_invocable_v<std::plus<>, Range<Mass>, Range<Mass>>);
static_assert(std::is_invocable_v<std::multiplies<>, Range<Mass>, int>);
static_assert(!std::is_invocable_v<std::minus<>, Range<Mass>, Range<Mass>>); // open at both ends: no range
static_assert(!std::is_invocable_v<std::divides<>, Range<Mass>, Range<Mass>>);
static_assert(!std::is_invocable_v<std::plus<>, Range<Mass>, Range<Volume>>);
static_assert(!std::is_invocable_v<std::plus<>, Range<Mass>, Mass>);

constexpr Range<Mass> grams(std::int64_t low_milli, std::int64_t high_milli)
{
    return {Mass::milli(low_milli), Mass::milli(high_milli)};
}

} // namespace

TEST_CASE("amount: one gram is a thousand milligrams and a million micrograms, exactly")
{
    CHECK(Mass::whole(1) == Mass::milli(1'000));
    CHECK(Mass::whole(1) == Mass::micro(1'000'000));
    CHECK(Mass::whole(1) == Mass::from_nano(1'000'000'000));
    CHECK(Mass::micro(2) + Mass::micro(3) == Mass::micro(5));
    CHECK(Mass::whole(2) - Mass::milli(1) == Mass::milli(1'999));
    CHECK(Mass::milli(333) * 3 == Mass::milli(999)); // no third of a gram is lost or made up
    CHECK(Mass{}.nano() == 0);
}

TEST_CASE("range: low is inside, high is not")
{
    constexpr auto three = grams(2'750, 3'250); // what 3 g of fat stands for
    CHECK(three.holds(Mass::milli(2'750)));
    CHECK(three.holds(Mass::from_nano(3'249'999'999)));
    CHECK_FALSE(three.holds(Mass::milli(3'250)));
    CHECK_FALSE(three.holds(Mass::from_nano(2'749'999'999)));
}

TEST_CASE("range: neighbours share no value, so that one of them is surely less")
{
    constexpr auto three = grams(2'750, 3'250);
    constexpr auto three_and_a_half = grams(3'250, 3'750);
    CHECK_FALSE(three.overlaps(three_and_a_half));
    CHECK(core::surely_less(three, three_and_a_half));
    CHECK_FALSE(core::surely_less(three_and_a_half, three));
    CHECK_FALSE(core::surely_less(three, three));
    CHECK(three.overlaps(three));
    constexpr auto wider = grams(3'000, 3'251);
    CHECK(three.overlaps(wider));
    CHECK(wider.overlaps(three));
    CHECK_FALSE(core::surely_less(three, wider));
}

TEST_CASE("range: sums and whole multiples are exact; every sum of two values is inside and every edge is reached")
{
    CHECK(grams(2'750, 3'250) + grams(500, 750) == grams(3'250, 4'000));
    CHECK(grams(2'750, 3'250) * 8 == grams(22'000, 26'000));
    CHECK(grams(2'750, 3'250) * 1 == grams(2'750, 3'250));
}

TEST_CASE("range: what two ranges both allow, or nothing")
{
    CHECK(core::intersection(grams(1'000, 3'000), grams(2'000, 4'000)) == grams(2'000, 3'000));
    CHECK(core::intersection(grams(1'000, 4'000), grams(2'000, 3'000)) == grams(2'000, 3'000));
    CHECK_FALSE(core::intersection(grams(1'000, 2'000), grams(2'000, 3'000))); // edges that touch share nothing
    CHECK_FALSE(core::intersection(grams(3'000, 4'000), grams(1'000, 2'000)));
}

TEST_CASE("wide: products of the largest amounts that a label can have do not overflow")
{
    const auto most = Mass::whole(100'000); // 100 kg, the most that a serving is read as
    const Range<Content> content{Content::whole(99'999), Content::whole(100'000)};
    const auto wide = core::product(content, most);
    CHECK(wide.low < wide.high);
    CHECK(core::rounded_down(wide.high, most.nano()) == content.high.nano());
    CHECK(core::rounded_up(wide.low, most.nano()) == content.low.nano());
    CHECK(core::product(content, Range<Mass>{most, most + most}).high == wide.high * 2);
    CHECK(core::product(content, Range<Mass>{most, most + most}).low == wide.low);
    CHECK(core::product(content, most).overlaps(core::product(content, most)));
    CHECK_FALSE(core::product(content, most).overlaps(core::product(content, most + most)));
}

TEST_CASE("wide: division rounds the way its name says")
{
    struct Case {
        core::Wide numerator, denominator;
        std::int64_t down, nearest, up;
    };
    const Case cases[] = {{0, 3, 0, 0, 0}, {1, 3, 0, 0, 1}, {2, 3, 0, 1, 1},  {3, 3, 1, 1, 1},
                          {1, 2, 0, 1, 1}, {3, 2, 1, 2, 2}, {5, 10, 0, 1, 1}, {49, 100, 0, 0, 1}};
    for (const auto& c : cases) {
        CAPTURE(static_cast<std::int64_t>(c.numerator));
        CAPTURE(static_cast<std::int64_t>(c.denominator));
        CHECK(core::rounded_down(c.numerator, c.denominator) == c.down);
        CHECK(core::rounded_nearest(c.numerator, c.denominator) == c.nearest);
        CHECK(core::rounded_up(c.numerator, c.denominator) == c.up);
    }
}

} // namespace test
