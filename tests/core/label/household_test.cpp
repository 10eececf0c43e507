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
        const auto& told_why = why;
        CAPTURE(told_why);
        CHECK_FALSE(core::household_times(text, core::Count::whole(2)));
        CHECK_FALSE(core::household_times(text + " cups of it", core::Count::whole(1'000)));
    }
    CHECK(core::household_times("9999 9999/1 cups", core::Count::whole(1'000)) == "19998000 cups");
}

// 21 CFR 101.9(b)(5): cups, tablespoons, teaspoons, pieces, fluid ounces, a fraction of the package.
TEST_CASE("household: what a serving is told in")
{
    using Unit = core::Household::Unit;
    struct Case {
        std::string why, text;
        std::optional<core::Household> read;
    };
    const Case cases[] = {
        {"a fraction of a cup", "2/3 cup (55 g)", core::Household{Unit::Cup, {2, 3}, false, ""}},
        {"a number and a fraction", "1 1/2 cups", core::Household{Unit::Cup, {3, 2}, false, ""}},
        {"pieces", "3 cookies (32 g)", core::Household{Unit::Piece, {3, 1}, false, "cookie"}},
        {"one piece", "1 cookie", core::Household{Unit::Piece, {1, 1}, false, "cookie"}},
        {"about", "about 12 chips", core::Household{Unit::Piece, {12, 1}, true, "chip"}},
        {"large letters", "About 12 Chips (28 g)", core::Household{Unit::Piece, {12, 1}, true, "chip"}},
        {"a share of the package", "1/4 package", core::Household{Unit::Package, {1, 4}, false, "package"}},
        {"a whole package", "1 can (355 mL)", core::Household{Unit::Package, {1, 1}, false, "can"}},
        {"tablespoons", "2 tbsp (32 g)", core::Household{Unit::Tablespoon, {2, 1}, false, ""}},
        {"with a full stop", "2 Tbsp. (32 g)", core::Household{Unit::Tablespoon, {2, 1}, false, ""}},
        {"written out", "1 tablespoon", core::Household{Unit::Tablespoon, {1, 1}, false, ""}},
        {"teaspoons", "1/4 tsp (1.5 g)", core::Household{Unit::Teaspoon, {1, 4}, false, ""}},
        {"fluid ounces", "8 fl oz", core::Household{Unit::FluidOunce, {8, 1}, false, ""}},
        {"with full stops", "8 FL. OZ. (240 mL)", core::Household{Unit::FluidOunce, {8, 1}, false, ""}},
        {"a sign for a half", "\xC2\xBD cup", core::Household{Unit::Cup, {1, 2}, false, ""}},
        {"a number and a sign", "1\xC2\xBD cups", core::Household{Unit::Cup, {3, 2}, false, ""}},
        {"with a blank between", "1 \xC2\xBE cups", core::Household{Unit::Cup, {7, 4}, false, ""}},
        {"ounces are a weight", "1 oz (28 g/about 12 chips)", core::Household{Unit::Ounce, {1, 1}, false, ""}},
        {"what stands behind a measure", "1/4 cup dry (40 g)", core::Household{Unit::Cup, {1, 4}, false, "dry"}},
        {"brackets in brackets", "1 cup (240 mL (8 fl oz))", core::Household{Unit::Cup, {1, 1}, false, ""}},
        {"no number", "cup", std::nullopt},
        {"a number alone", "2", std::nullopt},
        {"about alone", "about", std::nullopt},
        {"none of it", "0 cups", std::nullopt},
        {"over nothing", "1/0 cup", std::nullopt},
        {"a range is no number", "2-3 crackers", std::nullopt},
        {"less than nothing", "-1 cup", std::nullopt},
        {"nothing but brackets", "(240 mL)", std::nullopt},
        {"nothing", "", std::nullopt},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CAPTURE(c.text);
        const auto read = core::parse_household(c.text);
        CHECK(read.has_value() == c.read.has_value());
        if (!read || !c.read)
            continue;
        CHECK(read->unit == c.read->unit);
        CHECK(read->count.over * c.read->count.under == c.read->count.over * read->count.under);
        CHECK(read->about == c.read->about);
        CHECK(read->noun == c.read->noun);
    }
}

TEST_CASE("household: hostile texts name no serving, or one that can be counted with")
{
    for (const auto& [why, text] : hostile_texts())
        for (const auto& whole : {text, text + " cups", "1 " + text, "about " + text, "1/2 " + text}) {
            const auto& told_why = why;
            CAPTURE(told_why);
            const auto read = core::parse_household(whole);
            if (!read)
                continue;
            CHECK(read->count.over > 0);
            CHECK(read->count.under > 0);
            CHECK(read->noun.size() <= 600); // two hundred letters, each a fraction sign at most
        }
}

// 21 CFR 101.9(b)(5)(viii).
TEST_CASE("household: millilitres of a label's measures")
{
    using Unit = core::Household::Unit;
    CHECK(core::label_millilitres(Unit::Cup) == 240);
    CHECK(core::label_millilitres(Unit::Tablespoon) == 15);
    CHECK(core::label_millilitres(Unit::Teaspoon) == 5);
    CHECK(core::label_millilitres(Unit::FluidOunce) == 30);
    for (const Unit unit : {Unit::Ounce, Unit::Piece, Unit::Package})
        CHECK(core::label_millilitres(unit) == 0);
}

} // namespace test
