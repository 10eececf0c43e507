// Household measures of a whole package.
#include "core/label/household.h"
#include "tests/core/figure/hostile.h"

#include <doctest/doctest.h>

#include <optional>
#include <string>

namespace test {

// "1 1/2 cups a serving, 2 servings: 3 cups" is a fact of the trade, `common practice`; the others are its arithmetic.
TEST_CASE("household: a serving's measure times the servings")
{
    struct Case {
        std::string why, household;
        std::int64_t milli_servings;
        std::optional<std::string> whole;
    };
    const Case cases[] = {
        {"taught: a serving of 1 1/2 cups twice", "1 1/2 cups", 2'000, "3 cups"},
        {"one cup twice becomes plural", "1 cup", 2'000, "2 cups"},
        {"a fraction that does not come out even", "2/3 cup", 8'000, "5 1/3 cups"},
        {"a half twice is one, and singular", "1/2 cup", 2'000, "1 cup"},
        {"less than one stays singular", "1/4 cup", 3'000, "3/4 cup"},
        {"half a serving more", "1 cup", 2'500, "2 1/2 cups"},
        {"a decimal number", "0.5 cup", 3'000, "1 1/2 cups"},
        {"tablespoons keep their short form", "2 tbsp", 8'000, "16 tbsp"},
        {"fluid ounces are two words", "8 fl oz", 2'000, "16 fl oz"},
        {"what stands in brackets is left out", "1 cup (240 mL)", 2'000, "2 cups"},
        {"pieces", "3 cookies", 11'000, "33 cookies"},
        {"one of a plural", "1 bar", 6'000, "6 bars"},
        {"one serving is itself", "1 bottle", 1'000, "1 bottle"},
        {"a third of a serving would be thirds of thirds", "1/3 cup", 333, std::nullopt},
        {"no number in front", "cup", 2'000, std::nullopt},
        {"a unit that nobody listed: nothing rather than bad grammar", "2 wedges", 4'000, std::nullopt},
        {"a unit with words behind it", "1 cup dry mix", 4'000, std::nullopt},
        {"nothing", "", 2'000, std::nullopt},
        {"nothing but brackets", "(240 mL)", 2'000, std::nullopt},
        {"a fraction over nothing", "1/0 cup", 2'000, std::nullopt},
        {"a range is no number", "2-3 crackers", 2'000, std::nullopt},
        {"no cups", "0 cups", 2'000, std::nullopt},
        {"no servings", "1 cup", 0, std::nullopt},
        {"fewer than no servings", "1 cup", -2'000, std::nullopt},
        {"sixteenths: nobody measures so", "1/16 cup", 1'000, std::nullopt},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CAPTURE(c.household);
        CHECK(core::household_times(c.household, core::Count::milli(c.milli_servings)) == c.whole);
    }
}

TEST_CASE("household: servings finer than a thousandth are not multiplied")
{
    CHECK_FALSE(core::household_times("1 cup", core::Count::from_nano(2'000'000'001)));
}

TEST_CASE("household: hostile texts say nothing")
{
    for (const auto& [why, text] : hostile_texts()) {
        CAPTURE(why);
        CHECK_FALSE(core::household_times(text, core::Count::whole(2)));
        CHECK_FALSE(core::household_times(text + " cups of it", core::Count::whole(1'000)));
    }
    CHECK(core::household_times("9999 9999/1 cups", core::Count::whole(1'000)) == "19998000 cups");
}

} // namespace test
