// Serving size, servings and net quantity read together: worked out by hand. 21 CFR 101.9(b)(7)(ii), (b)(8)(i).
#include "core/label/sizes.h"
#include "tests/support/label_maker.h"

#include <doctest/doctest.h>

#include <optional>
#include <string>

namespace test {
namespace {

using core::Span;

core::Label label_of(const std::string& size, const std::string& servings, const std::string& net)
{
    auto label = make_label(size, servings, {});
    if (!net.empty())
        label.net_quantity = core::parse_net_quantity(net);
    return label;
}

/// In thousandths, edges outwards: a quotient seldom comes out even.
std::optional<Span> thousandths(const std::optional<Span>& span)
{
    constexpr std::int64_t milli = 1'000'000;
    if (!span)
        return std::nullopt;
    return Span{span->low / milli, (span->high + milli - 1) / milli};
}

} // namespace

TEST_CASE("sizes: serving size, servings and net quantity narrow each other")
{
    struct Case {
        std::string why, size, servings, net;
        std::optional<Span> serving, count; // thousandths
        bool contradict = false;
    };
    const Case cases[] = {
        {"30 g is 29.5 to 30.5 g, (b)(7)(ii); 8 without about is 8", "30 g", "8", "", Span{29'500, 30'500},
         Span{8'000, 8'000}},
        {"1.5 g is 1.45 to 1.55 g", "1.5 g", "8", "", Span{1'450, 1'550}, Span{8'000, 8'000}},
        {"2 g is 1.95 to 2.25 g: the step changes there", "2 g", "8", "", Span{1'950, 2'250}, Span{8'000, 8'000}},
        {"5 g is 4.75 to 5.5 g", "5 g", "8", "", Span{4'750, 5'500}, Span{8'000, 8'000}},
        {"about 9 is 8.5 to 9.5, (b)(8)(i)", "30 g", "about 9", "", Span{29'500, 30'500}, Span{8'500, 9'500}},
        {"about 2 is 1.5 to 2.25", "30 g", "about 2", "", Span{29'500, 30'500}, Span{1'500, 2'250}},
        {"about 5.5 is never printed", "30 g", "about 5.5", "", Span{29'500, 30'500}, std::nullopt},
        {"varied is no number", "30 g", "varied", "", Span{29'500, 30'500}, std::nullopt},
        {"no size printed", "", "8", "", std::nullopt, Span{8'000, 8'000}},
        // 339 to 341 g over 8: 42.375 to 42.625 g; 42 g is 41.5 to 42.5 g
        {"340 g in 8 servings of 42 g", "42 g", "8", "NET WT 340 g", Span{42'375, 42'500}, Span{8'000, 8'000}},
        // 339 to 341 over 41.5 to 42.5: 7.976 to 8.217
        {"about 8 of 42 g in 340 g", "42 g", "about 8", "340 g", Span{41'500, 42'500}, Span{7'976, 8'217}},
        // 350 +- 1 g over 41.5 to 42.5 g: 8.211 to 8.458, so 8 was rounded from that though no about stands there;
        // 349 / 8.458 is 41.26, so the size stays
        {"8 that must have been rounded", "42 g", "8", "350 g", Span{41'500, 42'500}, Span{8'211, 8'458}},
        {"two servings of 30 g are no 340 g", "30 g", "2", "340 g", Span{29'500, 30'500}, std::nullopt, true},
        {"a drained weight says nothing of it", "30 g", "2", "DRAINED WT 340 g", Span{29'500, 30'500},
         Span{2'000, 2'000}},
        {"millilitres say nothing of grams", "30 g", "2", "340 mL", Span{29'500, 30'500}, Span{2'000, 2'000}},
        {"a single serving is the package: 43 +- 1 g", "43 g", "single", "43 g", Span{42'500, 43'500},
         Span{1'000, 1'000}},
        // 1360 g ends in a 0 and has three figures before it: right to ten grams; 1350 to 1370 g over 48: 28.125 to
        // 28.542 g
        {"1.36 kg in 48 servings of 28 g", "28 g", "48", "1.36 kg", Span{28'125, 28'500}, Span{48'000, 48'000}},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto sizes = core::sizes_of(label_of(c.size, c.servings, c.net));
        CHECK(thousandths(sizes.serving) == c.serving);
        CHECK(thousandths(sizes.servings) == c.count);
        CHECK(sizes.contradict == c.contradict);
    }
}

TEST_CASE("sizes: what narrowed what is told")
{
    const auto by_servings = core::sizes_of(label_of("42 g", "8", "340 g"));
    CHECK(by_servings.serving_narrowed);
    CHECK_FALSE(by_servings.servings_narrowed);
    REQUIRE(by_servings.net);
    CHECK(*by_servings.net == Span{339'000'000'000, 341'000'000'000});
    CHECK(by_servings.servings->exact());
    const auto by_size = core::sizes_of(label_of("42 g", "about 8", "340 g"));
    CHECK(by_size.servings_narrowed);
    const auto alone = core::sizes_of(label_of("42 g", "about 8", ""));
    CHECK_FALSE(alone.servings_narrowed);
    CHECK_FALSE(alone.serving_narrowed);
    CHECK_FALSE(alone.net);
}

TEST_CASE("sizes: nothing is divided by, and nothing overflows")
{
    auto label = label_of("30 g", "8", "340 g");
    for (const std::int64_t size : {std::int64_t{0}, std::int64_t{-5}, std::int64_t{1}, std::int64_t{1} << 60})
        for (const std::int64_t count : {std::int64_t{0}, std::int64_t{-5}, std::int64_t{1}, std::int64_t{1} << 60}) {
            CAPTURE(size);
            CAPTURE(count);
            label.serving.metric = core::Mass::from_nano(size);
            label.servings.count = core::Count::from_nano(count);
            const auto sizes = core::sizes_of(label);
            if (sizes.serving)
                CHECK(sizes.serving->low > 0);
            if (sizes.servings)
                CHECK(sizes.servings->low > 0);
        }
}

} // namespace test
