// Serving sizes and servings per container, read and printed again.
#include "core/label/serving.h"
#include "tests/core/figure/hostile.h"

#include <doctest/doctest.h>

#include <string>
#include <variant>

namespace test {
namespace {

using core::Count;
using core::Error;
using core::Mass;
using core::Measure;
using core::ServingsPerContainer;
using core::Volume;
using Kind = core::ServingsPerContainer::Kind;

} // namespace

// Source of the forms: 21 CFR 101.9(b)(7).
TEST_CASE("serving: metric measures")
{
    struct Case {
        std::string why, text;
        Measure measure;
        std::string again;
    };
    const Case cases[] = {
        {"grams", "39 g", Mass::whole(39), "39 g"},
        {"no blank", "39g", Mass::whole(39), "39 g"},
        {"capitals", "39 G", Mass::whole(39), "39 g"},
        {"millilitres", "240 mL", Volume::whole(240), "240 mL"},
        {"in small letters", "240ml", Volume::whole(240), "240 mL"},
        {"in capitals", "240 ML", Volume::whole(240), "240 mL"},
        {"half grams", "1.5 g", Mass::milli(1'500), "1.5 g"},
        {"closing zeros say nothing here", "1.50 g", Mass::milli(1'500), "1.5 g"},
        {"kilograms", "1.36 kg", Mass::whole(1'360), "1360 g"},
        {"litres", "1.5 L", Volume::whole(1'500), "1500 mL"},
        {"blanks around it", "  39  g ", Mass::whole(39), "39 g"},
        {"the most", "100 kg", Mass::whole(100'000), "100000 g"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto measure = core::parse_measure(c.text);
        REQUIRE(measure);
        CHECK(*measure == c.measure);
        CHECK(core::measure_text(*measure) == c.again);
        CHECK(core::parse_measure(core::measure_text(*measure)) == c.measure);
    }
}

TEST_CASE("serving: what is no metric measure is refused")
{
    struct Case {
        std::string why, text;
    };
    const Case cases[] = {
        {"nothing", ""},
        {"no unit: grams or millilitres?", "39"},
        {"a unit alone", "g"},
        {"nothing weighs nothing", "0 g"},
        {"nor 0.0", "0.0 mL"},
        {"below nought", "-39 g"},
        {"household words", "2/3 cup"},
        {"ounces", "1.4 oz"},
        {"fluid ounces", "8 fl oz"},
        {"milligrams are a slip", "39 mg"},
        {"a comma", "1,5 g"},
        {"two measures", "39 g 40 g"},
        {"in brackets", "(39 g)"},
        {"more than 100 kg", "100001 g"},
        {"the same in kilograms", "100.001 kg"},
        {"more than 100 L", "101 L"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto measure = core::parse_measure(c.text);
        REQUIRE_FALSE(measure);
        CHECK(measure.error().kind == Error::Kind::BadValue);
        CHECK_FALSE(measure.error().place.expected.empty());
    }
    for (const auto& [why, text] : hostile_texts()) {
        const auto& told_why = why;
        CAPTURE(told_why);
        for (const std::string& unit : {std::string{}, std::string(" g"), std::string("mL")}) {
            const auto measure = core::parse_measure(text + unit);
            REQUIRE_FALSE(measure);
            CHECK(measure.error().place.found.size() <= 40);
        }
    }
}

// Source of the forms: 21 CFR 101.9(b)(8) ("about", "varied") and (b)(6) (single-serving containers).
TEST_CASE("serving: servings per container")
{
    struct Case {
        std::string why, text;
        ServingsPerContainer servings;
        std::string again;
    };
    const Case cases[] = {
        {"a number", "8", {Kind::Number, Count::whole(8)}, "8"},
        {"a half", "2.5", {Kind::Number, Count::milli(2'500)}, "2.5"},
        {"about", "about 9", {Kind::About, Count::whole(9)}, "about 9"},
        {"as labels begin it", "About 8", {Kind::About, Count::whole(8)}, "about 8"},
        {"blanks", "  about   2.5 ", {Kind::About, Count::milli(2'500)}, "about 2.5"},
        {"varied", "Varied", {Kind::Varied, Count{}}, "varied"},
        {"single", "single", {Kind::Single, Count::whole(1)}, "single"},
        {"the most", "1000", {Kind::Number, Count::whole(1'000)}, "1000"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto servings = core::parse_servings(c.text);
        REQUIRE(servings);
        CHECK(*servings == c.servings);
        CHECK(core::servings_text(*servings) == c.again);
        CHECK(core::parse_servings(c.again) == c.servings);
    }
    CHECK(core::servings_text(ServingsPerContainer{}).empty());
}

TEST_CASE("serving: what is no number of servings is refused")
{
    struct Case {
        std::string why, text;
    };
    const Case cases[] = {
        {"nothing", ""},
        {"none", "0"},
        {"about none", "about 0"},
        {"about alone", "about"},
        {"about what", "about many"},
        {"about twice", "about about 8"},
        {"run together", "about8"},
        {"a range", "8-9"},
        {"a fraction", "2 1/2"},
        {"with a word behind", "8 servings"},
        {"below nought", "-8"},
        {"more than a thousand", "1001"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto servings = core::parse_servings(c.text);
        REQUIRE_FALSE(servings);
        CHECK(servings.error().kind == Error::Kind::BadValue);
        CHECK(servings.error().place.found == c.text);
    }
    for (const auto& [why, text] : hostile_texts()) {
        const auto& told_why = why;
        CAPTURE(told_why);
        for (const std::string& before : {std::string{}, std::string("about ")}) {
            const auto servings = core::parse_servings(before + text);
            REQUIRE_FALSE(servings);
            CHECK(servings.error().place.found.size() <= 40);
        }
    }
}

TEST_CASE("serving: grams and millilitres are unlike")
{
    CHECK(core::same_dimension(Mass::whole(1), Mass::whole(2)));
    CHECK(core::same_dimension(Volume::whole(1), Volume::whole(2)));
    CHECK_FALSE(core::same_dimension(Mass::whole(1), Volume::whole(1)));
}

} // namespace test
