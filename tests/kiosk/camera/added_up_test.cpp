#include "kiosk/camera/added_up.h"
#include "kiosk/camera/doubt.h"
#include "tests/support/shop_runs.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <chrono>
#include <vector>

using core::Symbology;
using std::chrono::milliseconds;

namespace {

const kiosk::TimePoint begin{milliseconds(5000)};

/// EAN-13 of which every digit is likely and the ones in `hidden` are not seen: 9521234543213, number sets ABBABA
/// before the middle (GS1 General Specifications, section 5.2.1, for the first digit 9).
kiosk::Look look_with(const std::vector<std::size_t>& hidden)
{
    constexpr float strength = 30;
    constexpr int digits[12] = {5, 2, 1, 2, 3, 4, 5, 4, 3, 2, 1, 3};
    constexpr bool set_b[12] = {false, true, true, false, true, false};
    kiosk::Unsure unsure{&kiosk::ean_13, {}};
    unsure.fit.evidence.resize(12);
    for (std::size_t i = 0; i < 12; ++i)
        if (std::ranges::find(hidden, i) == hidden.end())
            unsure.fit.evidence[i][static_cast<std::size_t>(digits[i] + (set_b[i] ? 10 : 0))] = strength;
    unsure.fit.likeness = 0.85;
    unsure.fit.weakest = 0.4;
    unsure.fit.bands = 8;
    return {std::nullopt, unsure};
}

const kiosk::Reading truth{"9521234543213", Symbology::Ean13};

} // namespace

TEST_CASE("added up: what one picture hides another one shows")
{
    kiosk::AddedUp added_up;
    CHECK_FALSE(added_up.see(look_with({0, 1}), begin));
    CHECK_FALSE(added_up.see(look_with({4, 5}), begin + milliseconds(33)));
    CHECK(added_up.see(look_with({10, 11}), begin + milliseconds(66)) == truth);
}

TEST_CASE("added up: pictures that all hide the same digits, old ones and poor ones do not make a code")
{
    kiosk::AddedUp same;
    for (int i = 0; i < 20; ++i)
        CHECK_FALSE(same.see(look_with({2, 7}), begin + milliseconds(33 * i)));

    kiosk::AddedUp old;
    CHECK_FALSE(old.see(look_with({0, 1}), begin));
    CHECK_FALSE(old.see(look_with({4, 5}), begin + milliseconds(33)));
    CHECK_FALSE(old.see(look_with({10, 11}), begin + milliseconds(1000)));

    kiosk::AddedUp poor;
    auto look = look_with({});
    look.unsure->fit.likeness = 0.7;
    for (int i = 0; i < 20; ++i)
        CHECK_FALSE(poor.see(look, begin + milliseconds(33 * i)));
}

TEST_CASE("added up: a machine that takes long for each picture adds them up as well")
{
    kiosk::AddedUp slow;
    CHECK_FALSE(slow.see({}, begin));
    CHECK_FALSE(slow.see(look_with({0, 1}), begin + milliseconds(400)));
    CHECK_FALSE(slow.see(look_with({4, 5}), begin + milliseconds(800)));
    CHECK(slow.see(look_with({10, 11}), begin + milliseconds(1200)) == truth);

    kiosk::AddedUp too_slow; // who knows what stands there after so long
    for (int i = 0; i < 5; ++i)
        CHECK_FALSE(too_slow.see(look_with({static_cast<std::size_t>(2 * i), static_cast<std::size_t>(2 * i + 1)}),
                                 begin + milliseconds(3100 * i)));
}

TEST_CASE("added up: many pictures that each say little do not make a code, nor do those of a short one")
{
    kiosk::AddedUp still; // 30 ahead by picture: some misread ones are
    for (int i = 0; i < 20; ++i)
        CHECK_FALSE(still.see(look_with({2}), begin + milliseconds(33 * i)));

    kiosk::AddedUp eight;
    kiosk::Unsure unsure{&kiosk::ean_8, {}};
    unsure.fit.evidence.resize(8);
    constexpr int digits[8] = {9, 6, 3, 8, 5, 0, 7, 4}; // 96385074, a right number
    for (std::size_t i = 0; i < 8; ++i)
        unsure.fit.evidence[i][static_cast<std::size_t>(digits[i])] = 90;
    unsure.fit.likeness = 0.85;
    unsure.fit.weakest = 0.6;
    for (int i = 0; i < 5; ++i)
        CHECK_FALSE(eight.see({std::nullopt, unsure}, begin + milliseconds(33 * i)));
    CHECK(eight.likely().front() == kiosk::Reading{"96385074", Symbology::Ean8}); // but it may be asked about
}

TEST_CASE("added up: a sure code counts at once and forgets what came before")
{
    kiosk::AddedUp added_up;
    CHECK_FALSE(added_up.see(look_with({0, 1}), begin));
    CHECK_FALSE(added_up.see(look_with({4, 5}), begin + milliseconds(33)));
    const kiosk::Reading other{"96385074", Symbology::Ean8};
    CHECK(added_up.see({other, {}}, begin + milliseconds(66)) == other);
    CHECK_FALSE(added_up.see(look_with({10, 11}), begin + milliseconds(100)));
}

TEST_CASE("added up: what no picture shows leaves a handful of codes, the right one among them")
{
    kiosk::AddedUp added_up;
    for (int i = 0; i < 3; ++i) {
        CHECK(added_up.likely().empty());
        CHECK_FALSE(added_up.unsure());
        CHECK_FALSE(added_up.see(look_with({2, 7}), begin + milliseconds(33 * i)));
    }
    CHECK(added_up.unsure());
    const auto codes = added_up.likely();
    CHECK(codes.size() == 10);
    CHECK(std::ranges::find(codes, truth) != codes.end());

    CHECK(added_up.see({truth, {}}, begin + milliseconds(100)) == truth);
    CHECK(added_up.likely().empty());
    CHECK_FALSE(added_up.unsure());
}

TEST_CASE("doubt: a question comes when pictures stay unsure, and again after a while")
{
    kiosk::Doubt doubt({.patience = milliseconds(1500), .again = milliseconds(500)});
    std::vector<int> asked;
    for (int i = 0; i <= 50; ++i)
        if (doubt.sees(true, begin + milliseconds(50 * i)))
            asked.push_back(50 * i);
    CHECK(asked == std::vector{1500, 2000, 2500});
}

TEST_CASE("doubt: a picture that is sure, or shows no bars, begins the wait anew")
{
    kiosk::Doubt doubt({.patience = milliseconds(1500), .again = milliseconds(500)});
    std::vector<int> asked;
    for (int i = 0; i <= 60; ++i)
        if (doubt.sees(i != 29, begin + milliseconds(50 * i)))
            asked.push_back(50 * i);
    CHECK(asked == std::vector{3000});
}

// Half a second of a shaking hand. What must come is no more than what came of 40 runs (docs/camera.md).
TEST_CASE("added up: a code comes within half a second, and no other")
{
    constexpr int must_come[test::levels] = {0, 3, 3, 2}; // of 3
    constexpr int runs = PAIRSTAND_ONE_IN == 1 ? 3 : 1;
    constexpr int hardest = PAIRSTAND_ONE_IN == 1 ? test::levels : 3; // of one run of level 4 nothing need come
    for (int level = 2; level <= hardest; ++level) {
        CAPTURE(level);
        int came = 0;
        for (int run = 1; run <= runs; ++run) {
            kiosk::AddedUp added_up;
            for (int frame = 0; frame < test::frames_a_second / 2; ++frame) {
                const auto shot = test::shot_of(test::setting_of_run(level, static_cast<std::uint64_t>(run), frame));
                const auto reading = added_up.see(kiosk::look_at(shot.frame.view()), begin + milliseconds(33 * frame));
                if (!reading)
                    continue;
                CHECK(*reading == shot.truth);
                ++came;
                break;
            }
        }
        CHECK(came >= must_come[level - 1] * runs / 3);
    }
}
