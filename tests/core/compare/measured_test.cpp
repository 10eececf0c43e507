// The figures that are shown for a whole package and for equal amounts, the taught way first.
#include "core/compare/comparison.h"
#include "core/figure/figure.h"
#include "tests/core/compare/rows.h"
#include "tests/support/label_maker.h"

#include <doctest/doctest.h>

namespace test {
namespace {

using core::Basis;
using core::Percent;
using core::Reading;
using core::Source;
using N = core::Nutrient;

core::Shown shown(const core::Label& label, N nutrient, Basis basis)
{
    return row_of(core::compare(label, label, basis), nutrient).left;
}

std::string amount(const core::Shown& shown, N nutrient)
{
    return shown.figure ? core::as_printed(*shown.figure, nutrient) : "";
}

} // namespace

// "Less than 1 g" in 245 g, printed for 244.5 to 245.5 g (21 CFR 101.9(b)(7)(ii)), is less than 0.409 g in 100 g: a
// bound that is shown as 0.4 would be false.
TEST_CASE("same amount: less than so much stays a bound, rounded up")
{
    struct Case {
        std::string why, serving;
        N nutrient;
        std::string printed, hundred;
    };
    const Case cases[] = {
        {"1/2.445 = 0.409", "245 g", N::DietaryFiber, "less than 1", "less than 0.5 g"},
        {"1/0.995 = 1.005", "100 g", N::DietaryFiber, "less than 1", "less than 1 g"}, // printed for this very amount
        {"1/0.495 = 2.02", "50 g", N::DietaryFiber, "less than 1", "less than 2.1 g"},
        {"5/2.395 = 2.09 mg", "240 g", N::Cholesterol, "less than 5", "less than 2.1 mg"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto label = make_label(c.serving, "2", {{c.nutrient, c.printed, ""}});
        CHECK(amount(shown(label, c.nutrient, Basis::SameAmount), c.nutrient) == c.hundred);
    }
}

// Facts of the trade, `common practice`: as label classes teach a whole package. The ranges are our arithmetic on
// 21 CFR 101.9(c); Daily Values: 21 CFR 101.9(c)(9).
TEST_CASE("package: the taught figures")
{
    struct Case {
        std::string why, servings;
        N nutrient;
        std::string printed, percent;
        std::string whole;
        int taught; // percent, -1: none
        bool say_range;
        std::optional<Reading> reading;
    };
    const Case cases[] = {
        {"a drink with 27 g sugars a cup, 2 cups: 54 g", "2", N::TotalSugars, "27", "", "54 g", -1, false, {}},
        {"240 calories x 2 = 480", "2", N::Calories, "240", "", "480", -1, false, {}},
        {"fat 4 g is 5%, x 2 = 10%", "2", N::TotalFat, "4", "5%", "8 g", 10, false, Reading::Between},
        {"saturated fat 1.5 g is 8%, x 2 = 16%; 2.5 to 3.5 g is 12.5 to 17.5%", "2", N::SaturatedFat, "1.5", "8%",
         "3 g", 16, true, Reading::Between},
        {"sodium 430 mg is 19%, x 2 = 38%; 860 mg is 37.4%", "2", N::Sodium, "430", "19%", "860 mg", 38, false,
         Reading::High},
        {"chips, 9 servings of 130 calories", "9", N::Calories, "130", "", "1170", -1, false, {}},
        {"chips, fat 7 g = 9%, x 9 = 81%; 58.5 to 67.5 g is 75 to 86.54%", "9", N::TotalFat, "7", "9%", "63 g", 81,
         true, Reading::High},
        {"chips, sodium 55 mg = 2%, x 9 = 18%; 472.5 to 517.5 mg reads high", "9", N::Sodium, "55", "2%", "495 mg", 18,
         true, Reading::High},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto package =
            shown(make_label("30 g", c.servings, {{c.nutrient, c.printed, c.percent}}), c.nutrient, Basis::Package);
        CHECK(amount(package, c.nutrient) == c.whole);
        CHECK(package.source == Source::WorkedOut);
        REQUIRE(package.percent.has_value() == (c.taught >= 0));
        if (!package.percent)
            continue;
        CHECK(package.percent->percent == c.taught);
        CHECK(package.percent->source == Source::WorkedOut);
        CHECK(package.percent->say_range == c.say_range);
        CHECK(package.percent->reading == c.reading);
    }
}

TEST_CASE("package: the range behind the taught percent")
{
    const auto sodium = [](const std::string& printed, const std::string& percent, const std::string& servings) {
        return *shown(make_label("28 g", servings, {{N::Sodium, printed, percent}}), N::Sodium, Basis::Package).percent;
    };
    const auto twice = sodium("430", "19%", "2"); // 850 to 870 mg of 2300
    REQUIRE(twice.range);
    CHECK(twice.range->low == Percent::from_nano(36'956'521'739));
    CHECK(twice.range->high == Percent::from_nano(37'826'086'957));
    CHECK(twice.range->holds(Percent::milli(37'391))); // 860 mg of 2300: taught as 38%, and 37.4% in truth
    const auto chips = sodium("55", "2%", "9");        // 472.5 to 517.5 mg of 2300
    REQUIRE(chips.range);
    CHECK(chips.range->low == Percent::from_nano(20'543'478'260));
    CHECK(chips.range->high == Percent::from_nano(22'500'000'000));
    CHECK(chips.label_reading == Reading::Low);  // one serving
    const auto unsure = sodium("50", "2%", "9"); // 427.5 to 472.5 mg: 18.6 to 20.5%
    CHECK_FALSE(unsure.reading);
    CHECK(unsure.say_range);
}

TEST_CASE("package: a percent that the label does not print is worked out, except for protein")
{
    // Common practice: fiber 2 g is 7%.
    const auto label = make_label("30 g", "2", {{N::DietaryFiber, "2"}, {N::Protein, "9"}, {N::TransFat, "1"}});
    const auto fiber = shown(label, N::DietaryFiber, Basis::Serving);
    CHECK(fiber.percent->percent == 7);
    CHECK(fiber.percent->source == Source::WorkedOut);
    CHECK(shown(label, N::DietaryFiber, Basis::Package).percent->percent == 14);
    CHECK_FALSE(shown(label, N::Protein, Basis::Serving).percent);  // 21 CFR 101.9(c)(7)(ii): its quality counts
    CHECK_FALSE(shown(label, N::TransFat, Basis::Serving).percent); // no Daily Value
    const auto meat = make_label("30 g", "2", {{N::Protein, "9", "18%"}});
    CHECK(shown(meat, N::Protein, Basis::Package).percent->percent == 36); // taught product of what is printed
    CHECK_FALSE(shown(meat, N::Protein, Basis::Package).percent->range);   // and nothing known behind it
}

TEST_CASE("package: servings with about are a range, without it exact")
{
    const auto fat = [](const std::string& servings) {
        return *shown(make_label("30 g", servings, {{N::TotalFat, "3"}}), N::TotalFat, Basis::Package).range;
    };
    CHECK(fat("9").low == core::Content::milli(24'750));
    CHECK(fat("9").high == core::Content::milli(29'250));
    CHECK(fat("about 9").low == core::Content::milli(23'375));  // 2.75 x 8.5
    CHECK(fat("about 9").high == core::Content::milli(30'875)); // 3.25 x 9.5
    CHECK(fat("2.5").high == core::Content::milli(8'125));
    CHECK(fat("single").high == core::Content::milli(3'250));
}

TEST_CASE("package: a printed 0 or less than, multiplied, may have become something")
{
    const auto label = make_label("30 g", "9", {{N::TotalFat, "0"}, {N::DietaryFiber, "less than 1"}, {N::Iron, "2"}});
    const auto fat = shown(label, N::TotalFat, Basis::Package);
    CHECK(amount(fat, N::TotalFat) == "0 g");
    CHECK(fat.say_range);
    CHECK(fat.range->high == core::Content::milli(4'500));
    const auto fiber = shown(label, N::DietaryFiber, Basis::Package);
    CHECK(amount(fiber, N::DietaryFiber) == "less than 9 g");
    CHECK(fiber.say_range);
    CHECK_FALSE(shown(label, N::Iron, Basis::Package).say_range);
    CHECK_FALSE(shown(label, N::TotalFat, Basis::Serving).say_range);
}

// 21 CFR 101.9(b)(12)(i) and (e)(6)(i): the second column "per container". The figures: FDA's sample of two columns, as
// in tests/data/reference/label_examples.csv (`memory`).
TEST_CASE("package: a printed column per container is shown, nothing is multiplied")
{
    auto label = make_label("255 g", "2", {{N::TotalFat, "5", "6%"}, {N::Iron, "1", "6%"}, {N::Sodium, "240", "10%"}});
    label.second = core::SecondColumn{core::SecondColumn::Kind::PerContainer,
                                      make_column({{N::TotalFat, "10", "13%"}, {N::Iron, "3", "15%"}})};
    const auto fat = shown(label, N::TotalFat, Basis::Package);
    CHECK(fat.source == Source::Printed);
    CHECK(amount(fat, N::TotalFat) == "10 g");
    CHECK(fat.percent->percent == 13); // printed; the taught product would be 12
    CHECK_FALSE(fat.percent->say_range);
    CHECK(fat.percent->label_reading == Reading::Between);
    CHECK(amount(shown(label, N::Iron, Basis::Package), N::Iron) == "3 mg"); // 2 x 1 mg would be 2 mg
    const auto sodium = shown(label, N::Sodium, Basis::Package);             // not in that column: the taught way
    CHECK(sodium.source == Source::WorkedOut);
    CHECK(amount(sodium, N::Sodium) == "480 mg");
    CHECK(row_of(core::compare(label, label, Basis::Package), N::TotalFat).finding == core::Finding::SameFigure);
    label.second->kind = core::SecondColumn::Kind::AsPrepared;
    CHECK(shown(label, N::TotalFat, Basis::Package).source == Source::WorkedOut);
}

TEST_CASE("equal amounts: worked out to the digits worth showing, without a 5/20 reading")
{
    struct Case {
        std::string why, size;
        N nutrient;
        std::string printed, hundred;
        int percent; // -1: none
    };
    const Case cases[] = {
        {"fat to tenths", "30 g", N::TotalFat, "2.5", "8.3 g", 11},
        {"whole grams stay whole", "50 g", N::TotalFat, "3", "6 g", 8},
        {"sodium to whole milligrams", "55 g", N::Sodium, "160", "291 mg", 13},
        {"calories to whole ones", "55 g", N::Calories, "230", "418", -1},
        {"a small serving", "1.5 g", N::TotalFat, "0.5", "33.3 g", 43},
        {"100 g is as printed", "100 g", N::TotalFat, "3.5", "3.5 g", 4},
        {"100 mL likewise", "100 mL", N::TotalFat, "3.5", "3.5 g", 4},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto hundred = shown(make_label(c.size, "2", {{c.nutrient, c.printed}}), c.nutrient, Basis::SameAmount);
        CHECK(amount(hundred, c.nutrient) == c.hundred);
        CHECK((hundred.source == Source::Printed) ==
              (c.hundred == core::as_printed(*core::parse_figure(c.nutrient, c.printed), c.nutrient)));
        REQUIRE(hundred.percent.has_value() == (c.percent >= 0));
        if (!hundred.percent)
            continue;
        CHECK(hundred.percent->percent == c.percent);
        CHECK_FALSE(hundred.percent->reading); // the guide speaks of one serving
    }
}

TEST_CASE("equal amounts: the range counts the rounded serving size")
{
    const auto range = *shown(make_label("30 g", "2", {{N::TotalFat, "3"}}), N::TotalFat, Basis::SameAmount).range;
    CHECK(range.low == core::Content::from_nano(9'016'393'442));   // 2.75 / 30.5 x 100, down
    CHECK(range.high == core::Content::from_nano(11'016'949'153)); // 3.25 / 29.5 x 100, up
}

} // namespace test
