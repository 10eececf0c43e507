#include "kiosk/camera/reader.h"
#include "tests/support/barcode_frames.h"
#include "tests/support/shop_others.h"
#include "tests/support/shop_shots.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdint>

namespace {

struct Counts {
    int read = 0;
    int misread = 0;
    int frames = 0;
};

/// Every fourth frame: the benchmark reads all of them.
Counts read_level(int level)
{
    Counts counts;
    for (std::uint64_t i = 0; i < test::frames_a_level; i += PAIRSTAND_ONE_IN == 1 ? 4 : 15) {
        const test::Shot shot = test::shot_of(test::setting_of(level, test::first_frame + i));
        const auto reading = kiosk::read(shot.frame.view());
        ++counts.frames;
        if (reading == shot.truth)
            ++counts.read;
        else if (reading)
            ++counts.misread;
    }
    return counts;
}

} // namespace

// The frames are drawn (shop_shots.h), set so that ZXing-cpp 1.4 reads 123 of 240 and zbar 135. What must be read is
// what was measured, less one a level for compilers and libraries that round otherwise.
TEST_CASE("shop reader: what a cheap camera sees is read, and nothing is read wrong")
{
    constexpr int all[test::levels] = {15, 14, 10, 6};      // of 15
    constexpr int thinned_out[test::levels] = {4, 4, 2, 1}; // of 4
    for (int level = 1; level <= test::levels; ++level) {
        CAPTURE(level);
        const Counts counts = read_level(level);
        CHECK(counts.misread == 0);
        CHECK(counts.read >= (PAIRSTAND_ONE_IN == 1 ? all : thinned_out)[level - 1]);
    }
}

// Found by the long run (no_wrong_code): a decoder misread the one digit that made the sum right, and the shapes, held
// to the sum, agreed.
TEST_CASE("shop reader: bars with a wrong check digit are not read as the code next to them")
{
    const auto digits = test::other_setting_of(test::Other::Digits, 2, 12725, test::small_frame);
    CHECK_FALSE(kiosk::read(test::shot_of(digits.setting).frame.view()));
}

// Found by the long run (no_wrong_code): the left half of an EAN-13 has the bars of a UPC-E of number system 1, and
// this one has a right check digit.
TEST_CASE("shop reader: half of a code is not read as a short one")
{
    const auto half = test::shot_of(test::setting_of(4, 25125, test::small_frame));
    const auto reading = kiosk::read(half.frame.view());
    CHECK((!reading || *reading == half.truth));
}

// Found by the long run (no_wrong_code): three digits in a row, 221 and 777, were drawn half a module along and read as
// 887 and 111, past the check digit.
TEST_CASE("shop reader: digits that draw each other aside are not read as others")
{
    struct Case {
        int level;
        std::uint64_t number;
    };
    for (const Case& c : {Case{4, 46680}, Case{3, 47010}}) {
        CAPTURE(c.number);
        const auto shot = test::shot_of(test::setting_of(c.level, c.number, test::small_frame));
        const auto reading = kiosk::read(shot.frame.view());
        CHECK((!reading || *reading == shot.truth));
    }
}

// Where the other half is dark, a light margin is missing; a whole UPC-E of number system 1 has it.
TEST_CASE("shop reader: a UPC-E of number system 1 is read where a light margin tells it from half of a code")
{
    const auto whole = kiosk::read(test::draw({.symbology = core::Symbology::UpcE, .digits = "15285379"}).view());
    REQUIRE(whole);
    CHECK(whole->text == "15285379");
    auto half = test::draw({.symbology = core::Symbology::Ean13, .digits = "9528537396362"});
    CHECK(kiosk::read(half.view())->text == "9528537396362");
    for (int y = 0; y < half.height; ++y)
        std::fill_n(half.pixels.begin() + y * half.width + half.width / 2 + 12, half.width / 2 - 12, std::uint8_t{0});
    CHECK_FALSE(kiosk::read(half.view()));
}

// Found by the long run (no_wrong_code): both were read as an EAN-8 once.
TEST_CASE("shop reader: bars that look like a short code are not read as one")
{
    const auto soft = test::shot_of(test::setting_of(4, 29729, test::small_frame));
    const auto reading = kiosk::read(soft.frame.view());
    CHECK((!reading || *reading == soft.truth));
    const auto databar = test::other_setting_of(test::Other::DataBar, 2, 29051, test::small_frame);
    CHECK_FALSE(kiosk::read(test::shot_of(databar.setting).frame.view()));
}

TEST_CASE("shop reader: other codes, stripes and letters do not turn into a product code")
{
    int two_read = 0;
    std::uint64_t number = 0;
    for (const test::Other other : test::all_others)
        for (int level = 1; level <= test::levels; ++level) {
            if (++number % (PAIRSTAND_ONE_IN == 1 ? 1 : 2) != 0)
                continue;
            CAPTURE(test::name_of(other));
            CAPTURE(level);
            const auto made = test::other_setting_of(other, level, number, test::small_frame);
            const auto reading = kiosk::read(test::shot_of(made.setting).frame.view());
            if (reading)
                CHECK(std::ranges::find(made.truths, *reading) != made.truths.end());
            two_read += reading && other == test::Other::TwoProducts ? 1 : 0;
        }
    CHECK(two_read >= 1); // of two products, one
}
