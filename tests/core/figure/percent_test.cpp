// Percent Daily Value from an amount, and its reading by the 5/20 guide.
#include "core/figure/daily_values_table.h"
#include "core/figure/percent.h"
#include "core/figure/rounding.h"

#include <doctest/doctest.h>

#include <limits>
#include <optional>
#include <string>

namespace test {
namespace {

using core::Audience;
using core::Content;
using core::Nutrient;
using core::Panel;
using core::Percent;
using core::PercentRounding;
using core::Range;
using core::Reading;

Range<Percent> percents(std::int64_t low_milli, std::int64_t high_milli)
{
    return {Percent::milli(low_milli), Percent::milli(high_milli)};
}

/// 100 x amount / value to the nearest whole percent or by the steps of vitamins: said here a second time, on
/// fractions.
std::int64_t nearest_percent(std::int64_t amount, std::int64_t value, PercentRounding rounding)
{
    std::int64_t step = 1;
    if (rounding == PercentRounding::Vitamin)
        step = 100 * amount <= 10 * value ? 2 : 100 * amount <= 50 * value ? 5 : 10;
    return (200 * amount + step * value) / (2 * step * value) * step;
}

} // namespace

// Facts of the trade: `common practice`, as taught in class; the Daily Values are those of 21 CFR 101.9(c)(9).
TEST_CASE("percent: the figures that are taught")
{
    struct Case {
        std::string why;
        Nutrient nutrient;
        Content amount;
        int percent;
    };
    const Case cases[] = {
        {"fat 4 g", Nutrient::TotalFat, Content::whole(4), 5},
        {"fat 7 g", Nutrient::TotalFat, Content::whole(7), 9},
        {"saturated fat 1.5 g", Nutrient::SaturatedFat, Content::milli(1'500), 8},
        {"sodium 430 mg", Nutrient::Sodium, Content::milli(430), 19},
        {"sodium 55 mg", Nutrient::Sodium, Content::milli(55), 2},
        {"fiber 2 g", Nutrient::DietaryFiber, Content::whole(2), 7},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(core::percent_daily_value(c.nutrient, c.amount, Panel::Of2016, Audience::Adult) == c.percent);
    }
}

// Source: 21 CFR 101.9(c)(8)(iii), (c)(9) and (d)(7)(ii); potassium had a DRV before 27 July 2016.
TEST_CASE("percent: panel and audience decide the Daily Value and the steps")
{
    struct Case {
        std::string why;
        Nutrient nutrient;
        Content amount;
        Panel panel;
        Audience audience;
        std::optional<int> percent;
    };
    const Case cases[] = {
        {"8 g of fat", Nutrient::TotalFat, Content::whole(8), Panel::Of2016, Audience::Adult, 10},
        {"on an older label", Nutrient::TotalFat, Content::whole(8), Panel::Older, Audience::Adult, 12},
        {"for ages 1 to 3", Nutrient::TotalFat, Content::whole(8), Panel::Of2016, Audience::Ages1To3, 21},
        {"for infants", Nutrient::TotalFat, Content::whole(8), Panel::Of2016, Audience::Infant, 27},
        {"sodium has none for infants", Nutrient::Sodium, Content::milli(100), Panel::Of2016, Audience::Infant, {}},
        {"potassium in steps", Nutrient::Potassium, Content::milli(235), Panel::Of2016, Audience::Adult, 6},
        {"potassium whole before", Nutrient::Potassium, Content::milli(235), Panel::Older, Audience::Adult, 7},
        {"iron 8 mg", Nutrient::Iron, Content::milli(8), Panel::Of2016, Audience::Adult, 45},
        {"calories have none", Nutrient::Calories, Content::whole(140), Panel::Of2016, Audience::Adult, {}},
        {"trans fat has none", Nutrient::TransFat, Content::whole(1), Panel::Of2016, Audience::Adult, {}},
        {"total sugars have none", Nutrient::TotalSugars, Content::whole(12), Panel::Of2016, Audience::Adult, {}},
        {"fluoride has none", Nutrient::Fluoride, Content::milli(1), Panel::Of2016, Audience::Adult, {}},
        {"added sugars are new", Nutrient::AddedSugars, Content::whole(10), Panel::Older, Audience::Adult, {}},
        {"vitamin D was in IU", Nutrient::VitaminD, Content::micro(2), Panel::Older, Audience::Adult, {}},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(core::percent_daily_value(c.nutrient, c.amount, c.panel, c.audience) == c.percent);
    }
}

TEST_CASE("percent: agrees with the fraction, rounded once, for every Daily Value and a fine grid of amounts")
{
    int compared = 0;
    for (const auto& row : core::daily_value_rows()) {
        const auto rounding = core::percent_rounding(row.nutrient, row.panel);
        for (std::int64_t i = 0; i <= 3'000; ++i) {
            const std::int64_t amount = row.nano / 1'000 * i + i % 7; // up to 300 %, and off the round amounts
            const auto percent =
                core::percent_daily_value(row.nutrient, Content::from_nano(amount), row.panel, row.audience);
            ++compared;
            if (percent != nearest_percent(amount, row.nano, rounding))
                FAIL_CHECK(std::string(core::info(row.nutrient).key), ": ", amount, " of ", row.nano, " is ", *percent);
        }
    }
    CHECK(compared > 300'000);
}

TEST_CASE("percent: the largest amount that can be held does not overflow")
{
    const auto most = Content::from_nano(std::numeric_limits<std::int64_t>::max());
    const auto percent = core::percent_daily_value(Nutrient::VitaminB12, most, Panel::Of2016, Audience::Infant);
    REQUIRE(percent);
    CHECK(*percent == 1'000'000);
}

// Source: FDA, Interactive Nutrition Facts Label, percent Daily Value: 5 % or less is low, 20 % or more is high.
TEST_CASE("percent: the 5/20 reading takes in both ends")
{
    struct Case {
        std::string why;
        Percent percent;
        Reading reading;
    };
    const Case cases[] = {
        {"nought", Percent{}, Reading::Low},
        {"five itself", Percent::whole(5), Reading::Low},
        {"just above five", Percent::whole(5) + Percent::from_nano(1), Reading::Between},
        {"six", Percent::whole(6), Reading::Between},
        {"just below twenty", Percent::whole(20) - Percent::from_nano(1), Reading::Between},
        {"twenty itself", Percent::whole(20), Reading::High},
        {"above a hundred", Percent::whole(250), Reading::High},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(core::reading_of(c.percent) == c.reading);
    }
}

TEST_CASE("percent: a range has a reading only where all its values agree")
{
    struct Case {
        std::string why;
        Range<Percent> range;
        std::optional<Reading> reading;
    };
    const Case cases[] = {
        {"all below five", percents(1'500, 2'500), Reading::Low},
        {"the high edge is never reached: only 5 itself is low still",
         {Percent::whole(4), Percent::whole(5)},
         Reading::Low},
        {"five is the last that is inside",
         {Percent::whole(4), Percent::whole(5) + Percent::from_nano(1)},
         Reading::Low},
        {"across five", percents(4'500, 5'500), std::nullopt},
        {"all between", percents(5'001, 20'000), Reading::Between},
        {"from five on", percents(5'000, 20'000), std::nullopt},
        {"across twenty", percents(19'500, 20'500), std::nullopt},
        {"from twenty on", percents(20'000, 21'000), Reading::High},
        {"across both", percents(0, 30'000), std::nullopt},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(core::reading_of(c.range) == c.reading);
    }
}

} // namespace test
