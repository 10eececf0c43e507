#include "kiosk/camera/guidance.h"

#include <doctest/doctest.h>

using kiosk::BarsSeen;
using kiosk::Guidance;
using kiosk::Hint;
using kiosk::hint_for;
using kiosk::Milliseconds;
using kiosk::TimePoint;
using kiosk::WhatIsSeen;

namespace {

constexpr BarsSeen none{};
constexpr BarsSeen good{true, 300, 0.25F, 0.6F};
constexpr BarsSeen small{true, 100, 0.08F, 0.6F};

constexpr WhatIsSeen closer{true, false, false, small};
constexpr WhatIsSeen moving{true, true, false, good};

} // namespace

// Common practice: what somebody who stands beside would say.
TEST_CASE("guidance: the right word for one frame")
{
    struct Case {
        const char* why;
        WhatIsSeen seen;
        Hint hint;
    };
    const Case cases[] = {
        {"nobody there", {false, false, false, none}, Hint::Aim},
        {"stripes of the room behind", {false, false, false, good}, Hint::Aim},
        {"a package comes", {true, true, false, none}, Hint::Aim},
        {"it shows its front", {true, false, false, none}, Hint::Turn},
        {"bars too far away", closer, Hint::Closer},
        {"too far away and moved", {true, true, false, small}, Hint::Closer},
        {"bars of 1.5 pixels can be read", {true, true, false, {true, 143, 0.11F, 0.6F}}, Hint::HoldStill},
        {"moved", moving, Hint::HoldStill},
        {"smeared though it seems to stand", {true, false, false, {true, 300, 0.25F, 0.2F}}, Hint::HoldStill},
        {"so near that it is not sharp", {true, false, false, {true, 700, 0.55F, 0.2F}}, Hint::Back},
        {"larger than the picture", {true, true, false, {true, 1200, 0.94F, 0.6F}}, Hint::Back},
        {"all is well, and yet not read: bent, or it shines", {true, false, false, good}, Hint::Whole},
        {"read", {true, false, true, good}, Hint::Done},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(hint_for(c.seen) == c.hint);
    }
}

TEST_CASE("guidance: words do not flicker")
{
    Guidance guidance;
    TimePoint now{std::chrono::hours{1}};
    const auto after = [&](Milliseconds time, const WhatIsSeen& seen) { return guidance.see(seen, now += time); };
    CHECK(after(Milliseconds{0}, closer) == Hint::Aim);
    CHECK(after(Milliseconds{300}, closer) == Hint::Aim);
    CHECK(after(Milliseconds{100}, closer) == Hint::Closer); // for 400 ms
    for (int i = 0; i < 20; ++i) {                           // now this, now that: neither for long enough
        CHECK(after(Milliseconds{100}, moving) == Hint::Closer);
        CHECK(after(Milliseconds{100}, closer) == Hint::Closer);
    }
    CHECK(after(Milliseconds{100}, moving) == Hint::Closer);
    CHECK(after(Milliseconds{400}, moving) == Hint::HoldStill);
    CHECK(after(Milliseconds{100}, closer) == Hint::HoldStill);
    CHECK(after(Milliseconds{500}, closer) == Hint::HoldStill); // sure, but the other was shown for 600 ms only
    CHECK(after(Milliseconds{400}, closer) == Hint::Closer);
}

TEST_CASE("guidance: a package that lies still stays read, and its bars stay seen")
{
    const auto after = [](const WhatIsSeen& first, const WhatIsSeen& then) {
        Guidance guidance;
        TimePoint now{std::chrono::hours{1}};
        Hint hint = Hint::Aim;
        for (int i = 0; i < 40; ++i)
            hint = guidance.see(i < 20 ? first : then, now += Milliseconds{100});
        return hint;
    };
    constexpr WhatIsSeen read{true, false, true, good};
    constexpr WhatIsSeen not_read{true, false, false, good};
    constexpr WhatIsSeen no_bars{true, false, false, none};
    CHECK(after(read, not_read) == Hint::Done);
    CHECK(after(not_read, no_bars) == Hint::Whole);
    CHECK(after(read, moving) == Hint::HoldStill); // another one comes
    CHECK(after(no_bars, not_read) == Hint::Whole);
    CHECK(after(read, {}) == Hint::Aim);
}

TEST_CASE("guidance: what helps a package that lies still stays when nothing moves any more")
{
    struct Case {
        const char* why;
        WhatIsSeen seen;
        Hint at_rest;
    };
    const Case cases[] = {
        {"part of the bars is hidden", {true, false, false, good}, Hint::Whole},
        {"far away", closer, Hint::Closer},
        {"read", {true, false, true, good}, Hint::Done},
        {"nothing holds a thing still that is no package", {true, false, false, none}, Hint::Aim},
        {"nothing left to hold still", moving, Hint::Aim},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        Guidance guidance;
        TimePoint now{std::chrono::hours{1}};
        for (int i = 0; i < 20; ++i)
            (void)guidance.see(c.seen, now += Milliseconds{100});
        CHECK(guidance.see(c.seen, now) == hint_for(c.seen));
        guidance.rest();
        CHECK(guidance.see(c.seen, now) == c.at_rest);
        for (int i = 0; i < 20; ++i)
            (void)guidance.see({}, now += Milliseconds{100}); // it is taken away
        CHECK(guidance.see({}, now) == Hint::Aim);
    }
}
