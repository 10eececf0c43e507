// What people write into a sheet, read as figures: the forms that labels print, and everything that is none.
#include "core/figure/figure.h"
#include "tests/core/figure/hostile.h"

#include <doctest/doctest.h>

#include <optional>
#include <string>

namespace test {
namespace {

using core::Content;
using core::Decimal;
using core::Error;
using core::Figure;
using core::Nutrient;
using core::PrintedPercent;

} // namespace

TEST_CASE("figure: a plain decimal is read exactly, with the places that it was written with")
{
    struct Case {
        std::string why, text;
        Decimal value;
    };
    const Case cases[] = {
        {"nought", "0", {0, 0}},
        {"a whole number", "140", {140'000'000'000, 0}},
        {"a half", "0.5", {500'000'000, 1}},
        {"closing zeros are places too", "2.50", {2'500'000'000, 2}},
        {"leading zeros", "007", {7'000'000'000, 0}},
        {"one billionth", "0.000000001", {1, 9}},
        {"the most", "999999999.999999999", {999'999'999'999'999'999, 9}},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(core::parse_decimal(c.text) == c.value);
    }
}

TEST_CASE("figure: what is no plain decimal is nothing")
{
    struct Case {
        std::string why, text;
    };
    const Case cases[] = {
        {"nothing", ""},
        {"a point alone", "."},
        {"no digit before the point", ".5"},
        {"no digit behind the point", "5."},
        {"two points", "1.2.3"},
        {"a comma is no point: 1,5 may be a slip for 1.5 or for 15", "1,5"},
        {"thousands", "1,230"},
        {"a sign", "-1"},
        {"a plus", "+1"},
        {"a blank in front", " 1"},
        {"a blank behind", "1 "},
        {"an exponent", "1e3"},
        {"not a number", "nan"},
        {"hexadecimal", "0x10"},
        {"a fraction", "1/2"},
        {"ten whole digits", "1000000000"},
        {"ten places", "0.0000000001"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK_FALSE(core::parse_decimal(c.text));
    }
    for (const auto& [why, text] : hostile_texts()) {
        const auto& told_why = why;
        CAPTURE(told_why);
        CHECK_FALSE(core::parse_decimal(text));
    }
}

TEST_CASE("figure: a number prints with as many places as asked, halves up")
{
    struct Case {
        std::string why;
        std::int64_t nano;
        int decimals;
        std::string text;
    };
    const Case cases[] = {
        {"nought", 0, 0, "0"},
        {"nought with places", 0, 2, "0.00"},
        {"whole", 140'000'000'000, 0, "140"},
        {"a half up", 1'250'000'000, 1, "1.3"},
        {"just below a half", 1'249'999'999, 1, "1.2"},
        {"rounds over the point", 999'999'999, 0, "1"},
        {"a zero behind the point", 50'000'000, 2, "0.05"},
        {"below one place", 40'000'000, 1, "0.0"},
        {"all nine places", 1, 9, "0.000000001"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CHECK(core::decimal_text(c.nano, c.decimals) == c.text);
    }
}

// Source of the forms: 21 CFR 101.9(c) and (d)(7)(i) ("<" may stand for "less than").
TEST_CASE("figure: amounts are read as labels print them")
{
    struct Case {
        std::string why;
        Nutrient nutrient;
        std::string text;
        Figure figure;
    };
    const Case cases[] = {
        {"calories have no unit", Nutrient::Calories, "140", {Content::whole(140), false, 0}},
        {"the unit may be left out", Nutrient::TotalFat, "3", {Content::whole(3), false, 0}},
        {"the unit may stand there", Nutrient::TotalFat, "3 g", {Content::whole(3), false, 0}},
        {"without a blank", Nutrient::TotalFat, "3g", {Content::whole(3), false, 0}},
        {"blanks around it", Nutrient::TotalFat, "  3 g  ", {Content::whole(3), false, 0}},
        {"half grams", Nutrient::SaturatedFat, "1.5 g", {Content::milli(1'500), false, 1}},
        {"closing zeros stay", Nutrient::Iron, "1.60 mg", {Content::micro(1'600), false, 2}},
        {"less than, in words", Nutrient::DietaryFiber, "less than 1 g", {Content::whole(1), true, 0}},
        {"in capitals", Nutrient::DietaryFiber, "Less Than 1g", {Content::whole(1), true, 0}},
        {"as a sign", Nutrient::DietaryFiber, "<1g", {Content::whole(1), true, 0}},
        {"as a sign, with blanks", Nutrient::Cholesterol, "< 5 mg", {Content::milli(5), true, 0}},
        {"milligrams are grams inside", Nutrient::Sodium, "430 mg", {Content::milli(430), false, 0}},
        {"micrograms", Nutrient::VitaminD, "2 mcg", {Content::micro(2), false, 0}},
        {"a tenth of one", Nutrient::VitaminD, "0.1mcg", {Content::from_nano(100), false, 1}},
        {"with its note", Nutrient::VitaminA, "90 mcg RAE", {Content::micro(90), false, 0}},
        {"with its note, no blank", Nutrient::Folate, "80mcg DFE", {Content::micro(80), false, 0}},
        {"niacin equivalents", Nutrient::Niacin, "3.2 mg NE", {Content::micro(3'200), false, 1}},
        {"a figure that no rule prints is read all the same",
         Nutrient::TotalFat,
         "5.5",
         {Content::milli(5'500), false, 1}},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto figure = core::parse_figure(c.nutrient, c.text);
        REQUIRE(figure);
        CHECK(*figure == c.figure);
    }
}

TEST_CASE("figure: what is no amount of this nutrient is refused, and the refusal says what was expected")
{
    struct Case {
        std::string why;
        Nutrient nutrient;
        std::string text;
    };
    const Case cases[] = {
        {"nothing", Nutrient::TotalFat, ""},
        {"blanks", Nutrient::TotalFat, "   "},
        {"a unit alone", Nutrient::TotalFat, "g"},
        {"words", Nutrient::TotalFat, "none"},
        {"less than nothing", Nutrient::DietaryFiber, "less than 0 g"},
        {"less than alone", Nutrient::DietaryFiber, "less than"},
        {"less than twice", Nutrient::DietaryFiber, "less than <1 g"},
        {"another unit: 160 g of sodium would be a thousand times too much", Nutrient::Sodium, "160 g"},
        {"micrograms for milligrams", Nutrient::Iron, "8 mcg"},
        {"milligrams for micrograms", Nutrient::VitaminD, "2 mg"},
        {"milligrams for grams", Nutrient::TotalFat, "500 mg"},
        {"an older unit", Nutrient::VitaminD, "400 IU"},
        {"another nutrient's note", Nutrient::VitaminA, "90 mcg DFE"},
        {"a percent in the amount's place", Nutrient::TotalFat, "10%"},
        {"a range", Nutrient::TotalFat, "3-4 g"},
        {"below nought", Nutrient::TotalFat, "-3 g"},
        {"a comma", Nutrient::TotalFat, "1,5 g"},
        {"finer than can be held", Nutrient::VitaminD, "0.0001 mcg"},
        {"a kilogram and more", Nutrient::TotalFat, "1001 g"},
        {"more calories than any package holds", Nutrient::Calories, "100001"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto figure = core::parse_figure(c.nutrient, c.text);
        REQUIRE_FALSE(figure);
        CHECK(figure.error().kind == Error::Kind::BadValue);
        CHECK(figure.error().place.found == c.text);
        CHECK_FALSE(figure.error().place.expected.empty());
    }
}

TEST_CASE("figure: hostile text is refused, and only a readable piece of it is kept")
{
    for (const auto& [why, text] : hostile_texts()) {
        const auto& told_why = why;
        CAPTURE(told_why);
        for (const auto nutrient : {Nutrient::Calories, Nutrient::TotalFat, Nutrient::VitaminD}) {
            const auto figure = core::parse_figure(nutrient, text);
            REQUIRE_FALSE(figure);
            CHECK(figure.error().place.found.size() <= 40);
        }
        const auto percent = core::parse_percent(text);
        REQUIRE_FALSE(percent);
        CHECK(percent.error().kind == Error::Kind::BadValue);
        CHECK(percent.error().place.found.size() <= 40);
    }
}

TEST_CASE("figure: every nutrient's figures print again as they stood")
{
    const std::string numbers[] = {"0", "1", "0.5", "8", "2.50", "235", "999"};
    for (const auto& known : core::nutrients()) {
        CAPTURE(std::string(known.key));
        for (const auto& number : numbers) {
            CAPTURE(number);
            for (const std::string& before : {std::string{}, std::string("less than ")}) {
                if (!before.empty() && number == "0")
                    continue;
                const auto figure = core::parse_figure(known.nutrient, before + number);
                REQUIRE(figure);
                CHECK(core::number_of(*figure, known.unit) == number);
                const std::string unit(core::unit_name(known.unit));
                CHECK(core::as_printed(*figure, known.nutrient) == before + number + (unit.empty() ? "" : " " + unit));
                CHECK(core::parse_figure(known.nutrient, core::as_printed(*figure, known.nutrient)) == *figure);
            }
        }
    }
}

TEST_CASE("figure: printed percents")
{
    struct Case {
        std::string why, text;
        std::optional<PrintedPercent> percent;
    };
    const Case cases[] = {
        {"a number", "8", PrintedPercent{8, false}},
        {"with its sign", "8%", PrintedPercent{8, false}},
        {"a blank before the sign", " 8 % ", PrintedPercent{8, false}},
        {"nought", "0%", PrintedPercent{0, false}},
        {"above a hundred", "250%", PrintedPercent{250, false}},
        {"less than, in words", "less than 2%", PrintedPercent{2, true}},
        {"less than, as a sign", "<1%", PrintedPercent{1, true}},
        {"nothing", "", std::nullopt},
        {"a sign alone", "%", std::nullopt},
        {"two signs", "8%%", std::nullopt},
        {"no label prints a part of a percent", "8.5%", std::nullopt},
        {"nor a place", "8.0", std::nullopt},
        {"less than nothing", "<0%", std::nullopt},
        {"below nought", "-8%", std::nullopt},
        {"in words", "eight", std::nullopt},
        {"the most that is read", "10000", PrintedPercent{10'000, false}},
        {"more than that", "10001", std::nullopt},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto percent = core::parse_percent(c.text);
        REQUIRE(percent.has_value() == c.percent.has_value());
        if (c.percent)
            CHECK(*percent == *c.percent);
    }
}

} // namespace test
