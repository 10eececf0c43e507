// Worked answers at each limit of the nutrient content claims: a step below, at, above, and where the range straddles.
#include "core/rules/answer.h"
#include "core/rules/rule_sets.h"
#include "tests/support/label_maker.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

namespace test {
namespace {

using core::Nutrient;
using core::Reason;
using core::Verdict;
using N = Nutrient;
using V = Verdict;

core::Answer ask(const std::string& rule, const std::string& food, const core::Label& label,
                 std::optional<Nutrient> subject = std::nullopt)
{
    const core::Rule* row = core::rule_by_key(rule, subject);
    REQUIRE(row);
    const auto* amount = food.empty() ? nullptr : core::reference_amount(food);
    REQUIRE((food.empty() || amount));
    return core::answer_to(*row, label, amount);
}

struct Case {
    std::string why;
    std::string rule;
    std::string food;
    std::string serving;
    std::vector<Printed> printed;
    Verdict verdict;
    std::optional<Nutrient> subject = std::nullopt;
};

void check(const std::vector<Case>& cases)
{
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CAPTURE(c.rule);
        const auto answer = ask(c.rule, c.food, make_label(c.serving, "", c.printed), c.subject);
        CHECK(static_cast<int>(answer.verdict) == static_cast<int>(c.verdict));
        const bool straddles = c.verdict == V::CannotTell;
        CHECK(static_cast<int>(answer.reason) ==
              static_cast<int>(straddles ? Reason::RangeStraddles : Reason::Figures));
        CHECK(answer.decided.has_value());
    }
}

} // namespace

// Source: 21 CFR 101.60(b) and (c), 101.61(b); the ranges behind the figures: 101.9(c)(1), (4), (6).
// A soup of 245 g is served in its reference amount: nothing is scaled.
TEST_CASE("rules: calories, sugars and sodium at their limits")
{
    check({
        {"0 is less than 5 calories", "calorie_free", "soups", "245 g", {{N::Calories, "0"}}, V::Meets},
        {"5 may be 2.5 to 7.5", "calorie_free", "soups", "245 g", {{N::Calories, "5"}}, V::CannotTell},
        {"10 is 7.5 or more", "calorie_free", "soups", "245 g", {{N::Calories, "10"}}, V::DoesNotMeet},
        {"35 is less than 37.5", "low_calorie", "soups", "245 g", {{N::Calories, "35"}}, V::Meets},
        {"40 may be 42", "low_calorie", "soups", "245 g", {{N::Calories, "40"}}, V::CannotTell},
        {"45 is 42.5 or more", "low_calorie", "soups", "245 g", {{N::Calories, "45"}}, V::DoesNotMeet},
        {"0 is less than 0.5 g", "sugar_free", "soups", "245 g", {{N::TotalSugars, "0"}}, V::Meets},
        {"less than 1 g may be nothing", "sugar_free", "soups", "245 g", {{N::TotalSugars, "<1"}}, V::CannotTell},
        {"1 is 0.5 or more", "sugar_free", "soups", "245 g", {{N::TotalSugars, "1"}}, V::DoesNotMeet},
        {"0 is less than 5 mg", "sodium_free", "soups", "245 g", {{N::Sodium, "0"}}, V::Meets},
        {"5 is 5 mg or more", "sodium_free", "soups", "245 g", {{N::Sodium, "5"}}, V::DoesNotMeet},
        {"the same figures as sodium free", "salt_free", "soups", "245 g", {{N::Sodium, "0"}}, V::Meets},
        {"30 is less than 32.5", "very_low_sodium", "soups", "245 g", {{N::Sodium, "30"}}, V::Meets},
        {"35 may be 37", "very_low_sodium", "soups", "245 g", {{N::Sodium, "35"}}, V::CannotTell},
        {"40 is 37.5 or more", "very_low_sodium", "soups", "245 g", {{N::Sodium, "40"}}, V::DoesNotMeet},
        {"135 is less than 137.5", "low_sodium", "soups", "245 g", {{N::Sodium, "135"}}, V::Meets},
        {"140 is 137.5 to 145", "low_sodium", "soups", "245 g", {{N::Sodium, "140"}}, V::CannotTell},
        {"150 is 145 or more", "low_sodium", "soups", "245 g", {{N::Sodium, "150"}}, V::DoesNotMeet},
    });
}

// Source: 21 CFR 101.62(b) to (e); the ranges: 101.9(c)(2), (3).
TEST_CASE("rules: fat, saturated fat and cholesterol at their limits")
{
    check({
        {"0 is less than 0.5 g", "fat_free", "soups", "245 g", {{N::TotalFat, "0"}}, V::Meets},
        {"0.5 is 0.5 or more", "fat_free", "soups", "245 g", {{N::TotalFat, "0.5"}}, V::DoesNotMeet},
        {"2.5 is less than 2.75", "low_fat", "soups", "245 g", {{N::TotalFat, "2.5"}}, V::Meets},
        {"3 is 2.75 to 3.25", "low_fat", "soups", "245 g", {{N::TotalFat, "3"}}, V::CannotTell},
        {"3.5 is 3.25 or more", "low_fat", "soups", "245 g", {{N::TotalFat, "3.5"}}, V::DoesNotMeet},
        {"no saturated and no trans fat",
         "saturated_fat_free",
         "soups",
         "245 g",
         {{N::SaturatedFat, "0"}, {N::TransFat, "0"}},
         V::Meets},
        {"trans fat of 0.5 g alone is too much",
         "saturated_fat_free",
         "soups",
         "245 g",
         {{N::SaturatedFat, "0"}, {N::TransFat, "0.5"}},
         V::DoesNotMeet},
        {"below 0.75 g, and 9 x 0.75 is under 15 % of 95 calories",
         "low_saturated_fat",
         "soups",
         "245 g",
         {{N::SaturatedFat, "0.5"}, {N::Calories, "100"}},
         V::Meets},
        {"1 is 0.75 to 1.25",
         "low_saturated_fat",
         "soups",
         "245 g",
         {{N::SaturatedFat, "1"}, {N::Calories, "200"}},
         V::CannotTell},
        {"1.5 is 1.25 or more",
         "low_saturated_fat",
         "soups",
         "245 g",
         {{N::SaturatedFat, "1.5"}, {N::Calories, "200"}},
         V::DoesNotMeet},
        {"9 x 0.5 to 0.75 against 15 % of 27.5 to 32.5 calories",
         "low_saturated_fat",
         "soups",
         "245 g",
         {{N::SaturatedFat, "0.5"}, {N::Calories, "30"}},
         V::CannotTell},
        {"9 x 0.5 is over 15 % of 27.5 calories",
         "low_saturated_fat",
         "soups",
         "245 g",
         {{N::SaturatedFat, "0.5"}, {N::Calories, "25"}},
         V::DoesNotMeet},
        {"0 is the nearest 5 mg up to 2.5",
         "cholesterol_free",
         "soups",
         "245 g",
         {{N::Cholesterol, "0"}, {N::SaturatedFat, "1.5"}},
         V::CannotTell},
        {"less than 5 mg is 2 mg or more",
         "cholesterol_free",
         "soups",
         "245 g",
         {{N::Cholesterol, "<5"}, {N::SaturatedFat, "0"}},
         V::DoesNotMeet},
        {"saturated fat of 2 is 1.75 to 2.25",
         "cholesterol_free",
         "soups",
         "245 g",
         {{N::Cholesterol, "0"}, {N::SaturatedFat, "2"}},
         V::CannotTell},
        {"15 is less than 17.5",
         "low_cholesterol",
         "soups",
         "245 g",
         {{N::Cholesterol, "15"}, {N::SaturatedFat, "1"}},
         V::Meets},
        {"20 is 17.5 to 22.5",
         "low_cholesterol",
         "soups",
         "245 g",
         {{N::Cholesterol, "20"}, {N::SaturatedFat, "1"}},
         V::CannotTell},
        {"saturated fat of 2.5 fails whatever the cholesterol is",
         "low_cholesterol",
         "soups",
         "245 g",
         {{N::Cholesterol, "20"}, {N::SaturatedFat, "2.5"}},
         V::DoesNotMeet},
    });
}

// Source: 21 CFR 101.62(e)(1) and (4): per reference amount (85 g) and per 100 g, 100 / 84.5 to 100 / 85.5 of a
// serving.
TEST_CASE("rules: lean also holds in 100 g")
{
    const auto fish = [](const char* fat, const char* saturated, const char* cholesterol) {
        return std::vector<Printed>{{N::TotalFat, fat}, {N::SaturatedFat, saturated}, {N::Cholesterol, cholesterol}};
    };
    const char* food = "fish_without_sauce_cooked";
    check({
        {"7.5 x 100 / 84.5 is 8.9", "lean", food, "85 g", fish("7", "1", "60"), V::Meets},
        {"8.5 g is under 10, 8.5 x 100 / 84.5 is 10.06", "lean", food, "85 g", fish("8", "1", "60"), V::CannotTell},
        {"9.5 g is under 10, 8.5 x 100 / 85.5 is 9.94", "lean", food, "85 g", fish("9", "1", "60"), V::CannotTell},
        {"10 g is 9.5 or more, 11.1 in 100 g", "lean", food, "85 g", fish("10", "1", "60"), V::DoesNotMeet},
        {"82.5 x 100 / 85.5 is 96 mg", "lean", food, "85 g", fish("7", "1", "85"), V::DoesNotMeet},
        {"3.25 x 100 / 84.5 is 3.8", "extra_lean", food, "85 g", fish("3", "1", "60"), V::Meets},
        {"4.5 x 100 / 85.5 is over 5", "extra_lean", food, "85 g", fish("5", "1", "60"), V::DoesNotMeet},
    });
}

// Source: 21 CFR 101.54(b)(1), (c)(1); Daily Values: fiber 28 g, calcium 1300 mg, protein by its percent.
TEST_CASE("rules: high and good source at 10, 19 and 20 percent")
{
    check({
        {"7 g is 6.5 or more, 23 %", "high", "soups", "245 g", {{N::DietaryFiber, "7"}}, V::Meets, N::DietaryFiber},
        {"5.6 g lies in 5.5 to 6.5",
         "high",
         "soups",
         "245 g",
         {{N::DietaryFiber, "6"}},
         V::CannotTell,
         N::DietaryFiber},
        {"5 g is less than 5.5", "high", "soups", "245 g", {{N::DietaryFiber, "5"}}, V::DoesNotMeet, N::DietaryFiber},
        {"3.5 to 4.5 g is 12.5 to 16.1 %",
         "good_source",
         "soups",
         "245 g",
         {{N::DietaryFiber, "4"}},
         V::Meets,
         N::DietaryFiber},
        {"2.8 g lies in 2.5 to 3.5",
         "good_source",
         "soups",
         "245 g",
         {{N::DietaryFiber, "3"}},
         V::CannotTell,
         N::DietaryFiber},
        {"2 g is less than 2.5",
         "good_source",
         "soups",
         "245 g",
         {{N::DietaryFiber, "2"}},
         V::DoesNotMeet,
         N::DietaryFiber},
        {"6 g is over 19 %: high or nearly so",
         "good_source",
         "soups",
         "245 g",
         {{N::DietaryFiber, "6"}},
         V::DoesNotMeet,
         N::DietaryFiber},
        {"320 mg is 24 %", "high", "soups", "245 g", {{N::Calcium, "320", "25%"}}, V::Meets, N::Calcium},
        {"260 mg is 20 % in the middle", "high", "soups", "245 g", {{N::Calcium, "260"}}, V::CannotTell, N::Calcium},
        {"a percent of protein counts its quality: 10 %",
         "high",
         "soups",
         "245 g",
         {{N::Protein, "12", "10%"}},
         V::DoesNotMeet,
         N::Protein},
        {"25 %", "high", "soups", "245 g", {{N::Protein, "15", "25%"}}, V::Meets, N::Protein},
    });
    const auto no_percent = ask("high", "soups", make_label("245 g", "", {{N::Protein, "15"}}), N::Protein);
    CHECK(no_percent.verdict == V::CannotTell); // grams of protein tell no percent
    CHECK(no_percent.reason == Reason::FigureNotPrinted);
}

// Source: 21 CFR 101.13(h)(1): more than 13 g, 4 g, 60 mg, 480 mg; per reference amount, per serving, in 50 g if small.
TEST_CASE("rules: disclosure levels hold for every nutrient, amount by amount")
{
    const auto food = [](const char* fat, const char* saturated, const char* cholesterol, const char* sodium) {
        return std::vector<Printed>{
            {N::TotalFat, fat}, {N::SaturatedFat, saturated}, {N::Cholesterol, cholesterol}, {N::Sodium, sodium}};
    };
    const char* rule = "within_disclosure_levels";
    check({
        {"12 g, 3.5 g, 55 mg, 470 mg", rule, "soups", "245 g", food("12", "3.5", "55", "470"), V::Meets},
        {"13 g is 12.5 to 13.5", rule, "soups", "245 g", food("13", "3.5", "55", "470"), V::CannotTell},
        {"14 g is 13.5 or more", rule, "soups", "245 g", food("14", "3.5", "55", "470"), V::DoesNotMeet},
        {"4.5 g is 4.25 or more", rule, "soups", "245 g", food("12", "4.5", "55", "470"), V::DoesNotMeet},
        {"65 mg is 62.5 or more", rule, "soups", "245 g", food("12", "3.5", "65", "470"), V::DoesNotMeet},
        {"490 mg is 485 or more", rule, "soups", "245 g", food("12", "3.5", "55", "490"), V::DoesNotMeet},
        {"8 g in 28 g is 13.2 g in 50 g at least", rule, "snacks", "28 g", food("8", "1", "0", "150"), V::DoesNotMeet},
        {"310 mg in 28 g is 535 mg in 50 g at least", rule, "snacks", "28 g", food("5", "1", "0", "310"),
         V::DoesNotMeet},
        {"6 g in 28 g is under 12 g in 50 g", rule, "snacks", "28 g", food("6", "1", "0", "150"), V::Meets},
        {"a serving of twice the reference amount", rule, "soups", "490 g", food("16", "1", "0", "150"),
         V::DoesNotMeet},
    });
    const auto answer = ask(rule, "soups", make_label("490 g", "", food("16", "1", "0", "150")));
    REQUIRE(answer.decided);
    CHECK(answer.decided->limit.per == core::Per::Serving); // 8 g in 245 g is within
}

// Source: 21 CFR 101.62(b)(2)(i)(B) and the like: reference amount 30 g or less, or 2 tablespoons or less.
TEST_CASE("rules: a small reference amount is also judged in 50 g")
{
    check({
        {"1.75 x 50 / 29.5 is 2.97", "low_fat", "cookies", "30 g", {{N::TotalFat, "1.5"}}, V::Meets},
        {"1.75 to 2.25 in 50 g is 2.87 to 3.81", "low_fat", "cookies", "30 g", {{N::TotalFat, "2"}}, V::CannotTell},
        {"2.25 x 50 / 30.5 is 3.69", "low_fat", "cookies", "30 g", {{N::TotalFat, "2.5"}}, V::DoesNotMeet},
        {"in 40 g the same 2.5 g pass: not small",
         "low_fat",
         "cereal_20_to_43_g_per_cup",
         "40 g",
         {{N::TotalFat, "2.5"}},
         V::Meets},
        {"saturated fat has no such rule: 0.75 in 30 g",
         "low_saturated_fat",
         "cookies",
         "30 g",
         {{N::SaturatedFat, "0.5"}, {N::Calories, "140"}},
         V::Meets},
    });
    const auto answer = ask("low_fat", "cookies", make_label("30 g", "", {{N::TotalFat, "2.5"}}));
    REQUIRE(answer.decided);
    CHECK(answer.decided->amount == core::Measure(core::Mass::whole(50)));
    CHECK(answer.decided->worked_out == core::Content::from_nano(4'166'666'667)); // 2.5 x 50 / 30
}

// The label's 39 g is 38.5 to 39.5: 40 g hold 40/39.5 to 40/38.5 of it.
TEST_CASE("rules: another serving than the reference amount is scaled crosswise")
{
    const char* cereal = "cereal_20_to_43_g_per_cup";
    check({
        {"132.5 x 40 / 38.5 is 137.7", "low_sodium", cereal, "39 g", {{N::Sodium, "130"}}, V::Meets},
        {"137.5 x 40 / 38.5 is 142.9", "low_sodium", cereal, "39 g", {{N::Sodium, "135"}}, V::CannotTell},
        {"137.5 x 40 / 39.5 is 139.2: as it would print, 140 stays in doubt",
         "low_sodium",
         cereal,
         "39 g",
         {{N::Sodium, "140"}},
         V::CannotTell},
        {"145 x 40 / 39.5 is 146.8", "low_sodium", cereal, "39 g", {{N::Sodium, "150"}}, V::DoesNotMeet},
        {"a serving of 30 g, a reference amount of 40 g",
         "low_sodium",
         cereal,
         "30 g",
         {{N::Sodium, "110"}},
         V::DoesNotMeet},
        {"0 g of fat in 30 g could be 0.6 g in 40 g", "fat_free", cereal, "30 g", {{N::TotalFat, "0"}}, V::CannotTell},
    });
}

} // namespace test
