#include "kiosk/sound/tones.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <span>

namespace {

using kiosk::samples_of;
using kiosk::Tone;

/// Notes a second, from how often the wave rises through zero.
double pitch(std::span<const std::int16_t> samples)
{
    int rises = 0;
    for (std::size_t i = 1; i < samples.size(); ++i)
        rises += samples[i - 1] < 0 && samples[i] >= 0 ? 1 : 0;
    return static_cast<double>(rises) * kiosk::samples_a_second / static_cast<double>(samples.size());
}

} // namespace

TEST_CASE("tones: begin and end in silence, never crack, never shout, are short")
{
    for (const Tone tone : {Tone::Found, Tone::Refused, Tone::Touched}) {
        CAPTURE(static_cast<int>(tone));
        const auto samples = samples_of(tone);
        REQUIRE(samples.size() > 100);
        CHECK(samples.size() < kiosk::samples_a_second / 2);
        CHECK(samples.front() == 0);
        CHECK(samples.back() == 0);
        int jump = 0;
        int loudest = 0;
        for (std::size_t i = 1; i < samples.size(); ++i) {
            jump = std::max(jump, std::abs(samples[i] - samples[i - 1]));
            loudest = std::max(loudest, std::abs(static_cast<int>(samples[i])));
        }
        CHECK(loudest > 1'000);
        CHECK(loudest < 32'767 / 2);
        CHECK(jump < loudest / 4); // a sine of 1,320 Hz at 48,000 samples changes by 17 % of its height at most
    }
}

TEST_CASE("tones: found rises, refused is low and comes twice")
{
    const auto found = samples_of(Tone::Found);
    const std::span<const std::int16_t> all(found);
    CHECK(pitch(all.last(all.size() / 3)) > 1.3 * pitch(all.first(all.size() / 3)));

    const auto refused = samples_of(Tone::Refused);
    const std::span<const std::int16_t> twice(refused);
    const auto third = twice.size() / 3;
    CHECK(pitch(twice.first(third)) < 400);
    const auto middle = twice.subspan(twice.size() / 2 - 1'000, 2'000);
    CHECK(std::ranges::all_of(middle, [](std::int16_t sample) { return sample == 0; }));
    // A tenth of a second each: one wave more or less at an edge is 10 Hz.
    CHECK(std::abs(pitch(twice.last(third)) - pitch(twice.first(third))) <= 20);
}
