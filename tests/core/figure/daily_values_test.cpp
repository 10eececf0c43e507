// The look-up of Daily Values; the rows themselves are tried in tests/reference/daily_values_test.cpp.
#include "core/figure/daily_values.h"

#include <doctest/doctest.h>

#include <string>

namespace test {

using core::Audience;
using core::Content;
using core::Nutrient;
using core::Panel;

// Source: 21 CFR 101.9(c)(9) and (c)(8)(iv).
TEST_CASE("daily values: unlike units come out in grams alike")
{
    const auto adult = [](Nutrient nutrient) { return core::daily_value(nutrient, Panel::Of2016, Audience::Adult); };
    CHECK(adult(Nutrient::TotalFat) == Content::whole(78));
    CHECK(adult(Nutrient::Sodium) == Content::milli(2'300));
    CHECK(adult(Nutrient::VitaminD) == Content::micro(20));
    CHECK(adult(Nutrient::VitaminB12) == Content::from_nano(2'400));
}

// Source: 21 CFR 101.9(c)(9) lists none for these.
TEST_CASE("daily values: where the rule sets none, there is none")
{
    for (const auto nutrient : {Nutrient::Calories, Nutrient::TransFat, Nutrient::PolyunsaturatedFat,
                                Nutrient::MonounsaturatedFat, Nutrient::SolubleFiber, Nutrient::InsolubleFiber,
                                Nutrient::TotalSugars, Nutrient::SugarAlcohol, Nutrient::Fluoride}) {
        CAPTURE(std::string(core::info(nutrient).key));
        for (const auto panel : {Panel::Of2016, Panel::Older})
            for (const auto audience : {Audience::Adult, Audience::Ages1To3, Audience::Infant})
                CHECK_FALSE(core::daily_value(nutrient, panel, audience));
    }
}

TEST_CASE("daily values: whoever prints a percent on an adult label of 2016 has a Daily Value, and the other way round")
{
    for (const auto& known : core::nutrients()) {
        CAPTURE(std::string(known.key));
        const bool has_value = core::daily_value(known.nutrient, Panel::Of2016, Audience::Adult).has_value();
        CHECK(has_value == (known.percent != core::PercentRounding::None));
    }
}

} // namespace test
