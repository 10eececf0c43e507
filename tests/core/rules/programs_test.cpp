// Worked answers at the programs' limits: by the printed figure, an ounce counted both ways.
#include "core/origin.h"
#include "core/rules/answer.h"
#include "core/rules/programs.h"
#include "core/rules/rule_sets.h"
#include "tests/support/label_maker.h"

#include <doctest/doctest.h>

#include <string>
#include <vector>

namespace test {
namespace {

using core::Reason;
using core::Verdict;
using N = core::Nutrient;
using V = core::Verdict;
using R = core::Reason;

struct Case {
    std::string why;
    std::string rule;
    std::string food;
    std::string serving;
    Printed printed;
    Verdict verdict;
    Reason reason;
    bool agrees = true;
};

void check(const std::vector<Case>& cases)
{
    for (const auto& c : cases) {
        CAPTURE(c.why);
        CAPTURE(c.rule);
        const auto answer = core::answer_to(*core::rule_by_key(c.rule), make_label(c.serving, "", {c.printed}),
                                            core::reference_amount(c.food));
        CHECK(static_cast<int>(answer.verdict) == static_cast<int>(c.verdict));
        CHECK(static_cast<int>(answer.reason) == static_cast<int>(c.reason));
        CHECK(answer.true_content_agrees == c.agrees);
    }
}

constexpr const char* cereal = "cereal_20_to_43_g_per_cup";

} // namespace

// Source: 7 CFR 226.20(a)(4)(ii): 6 g per dry ounce; 28 g or 28.349523125 g. For 40 g that is 8.57 or 8.47 g.
TEST_CASE("programs: CACFP breakfast cereal, at most 6 g a dry ounce")
{
    const char* added = "cacfp_cereal_added_sugars";
    check({
        {"8 passes both ways; 8.5 in 39.5 would not",
         added,
         cereal,
         "40 g",
         {N::AddedSugars, "8"},
         V::Meets,
         R::Figures,
         false},
        {"7.5 in 39.5 is 5.4 an ounce", added, cereal, "40 g", {N::AddedSugars, "7"}, V::Meets, R::Figures},
        {"9 fails both ways; 8.5 in 40.5 would not",
         added,
         cereal,
         "40 g",
         {N::AddedSugars, "9"},
         V::DoesNotMeet,
         R::Figures,
         false},
        {"10 fails whatever is behind it", added, cereal, "40 g", {N::AddedSugars, "10"}, V::DoesNotMeet, R::Figures},
        {"12 in 39 is 8.6 or 8.7", added, cereal, "39 g", {N::AddedSugars, "12"}, V::DoesNotMeet, R::Figures},
        {"28 g is what an ounce prints as: 6 is 6",
         added,
         cereal,
         "28 g",
         {N::AddedSugars, "6"},
         V::Meets,
         R::Figures,
         false},
        {"7 in the ounce", added, cereal, "28 g", {N::AddedSugars, "7"}, V::DoesNotMeet, R::Figures},
        {"12 in 56 is 6.00 or 6.07", added, cereal, "56 g", {N::AddedSugars, "12"}, V::CannotTell, R::OunceDecides},
        {"11 in 56 is 5.50 or 5.57", added, cereal, "56 g", {N::AddedSugars, "11"}, V::Meets, R::Figures},
        {"13 in 60 is 6.07 or 6.14", added, cereal, "60 g", {N::AddedSugars, "13"}, V::DoesNotMeet, R::Figures, false},
        {"less than 1 g", added, cereal, "30 g", {N::AddedSugars, "<1"}, V::Meets, R::Figures},
        {"total sugars on an older label",
         "cacfp_cereal_total_sugars",
         cereal,
         "30 g",
         {N::TotalSugars, "6"},
         V::Meets,
         R::Figures,
         false},
        {"added sugars are not printed",
         added,
         cereal,
         "30 g",
         {N::TotalSugars, "6"},
         V::CannotTell,
         R::FigureNotPrinted},
        {"cups, no grams", added, cereal, "", {N::AddedSugars, "6"}, V::CannotTell, R::NoServingSize},
        {"hot cereal as it stands in the box",
         added,
         "hot_cereal_flavored_dry",
         "43 g",
         {N::AddedSugars, "12"},
         V::DoesNotMeet,
         R::Figures},
        {"hot cereal prepared: no dry weight",
         added,
         "hot_cereal_prepared",
         "240 mL",
         {N::AddedSugars, "12"},
         V::NotForThisFood,
         R::OtherFood},
    });
}

// Source: 7 CFR 226.20(a)(5)(iii)(B): 12 g of added, before 23 g of total sugars in 6 oz (168 or 170.1 g).
TEST_CASE("programs: CACFP yogurt, 6 ounces")
{
    check({
        {"10 in 150 g is 11.2 or 11.3",
         "cacfp_yogurt_added_sugars",
         "yogurt",
         "150 g",
         {N::AddedSugars, "10"},
         V::Meets,
         R::Figures},
        {"11 in 150 g is 12.3 or 12.5",
         "cacfp_yogurt_added_sugars",
         "yogurt",
         "150 g",
         {N::AddedSugars, "11"},
         V::DoesNotMeet,
         R::Figures,
         false},
        {"170 g is what 6 oz print as",
         "cacfp_yogurt_added_sugars",
         "yogurt",
         "170 g",
         {N::AddedSugars, "12"},
         V::Meets,
         R::Figures,
         false},
        {"13 in 170 g",
         "cacfp_yogurt_added_sugars",
         "yogurt",
         "170 g",
         {N::AddedSugars, "13"},
         V::DoesNotMeet,
         R::Figures},
        {"23 g in 170 g",
         "cacfp_yogurt_total_sugars",
         "yogurt",
         "170 g",
         {N::TotalSugars, "23"},
         V::Meets,
         R::Figures,
         false},
        {"24 g in 170 g",
         "cacfp_yogurt_total_sugars",
         "yogurt",
         "170 g",
         {N::TotalSugars, "24"},
         V::DoesNotMeet,
         R::Figures},
    });
}

// Source: 7 CFR 246.10(e)(12), Table 4: 28 mg of iron and at most 21.2 g of sugars in 100 g dry; 40 g in a cup of
// yogurt.
TEST_CASE("programs: WIC")
{
    check({
        {"8.4 in 30 g is 28 in 100 g",
         "wic_cereal_iron",
         cereal,
         "30 g",
         {N::Iron, "8.4"},
         V::Meets,
         R::Figures,
         false},
        {"8.1 in 30 g is 27", "wic_cereal_iron", cereal, "30 g", {N::Iron, "8.1"}, V::DoesNotMeet, R::Figures},
        {"45 % of 18 mg: 42.5 to 47.5 %, in 28 g 27 to 31 in 100 g",
         "wic_cereal_iron",
         cereal,
         "28 g",
         {N::Iron, "", "45%"},
         V::CannotTell,
         R::RangeStraddles},
        {"90 % is enough in any case", "wic_cereal_iron", cereal, "28 g", {N::Iron, "", "90%"}, V::Meets, R::Figures},
        {"6 in 30 g is 20 in 100 g",
         "wic_cereal_total_sugars",
         cereal,
         "30 g",
         {N::TotalSugars, "6"},
         V::Meets,
         R::Figures,
         false},
        {"7 in 30 g is 23.3",
         "wic_cereal_total_sugars",
         cereal,
         "30 g",
         {N::TotalSugars, "7"},
         V::DoesNotMeet,
         R::Figures},
        {"27 in 170 g is 38.9 in a cup of 245 g",
         "wic_yogurt_total_sugars",
         "yogurt",
         "170 g",
         {N::TotalSugars, "27"},
         V::Meets,
         R::Figures},
        {"28 in 170 g is 40.4",
         "wic_yogurt_total_sugars",
         "yogurt",
         "170 g",
         {N::TotalSugars, "28"},
         V::DoesNotMeet,
         R::Figures,
         false},
    });
}

// Every row: a citation, days in order, and a rule since 2024 marked where its figure was not read.
TEST_CASE("programs: citations and days")
{
    for (const auto& rule : core::program_rules()) {
        CAPTURE(std::string(rule.key));
        CHECK(rule.citation.starts_with("7 CFR 2"));
        CHECK((!rule.from || !rule.to || *rule.from < *rule.to));
        for (const auto& day : {rule.from, rule.to})
            if (day) {
                const std::string text = std::to_string(day->year) + (day->month < 10 ? "-0" : "-") +
                                         std::to_string(day->month) + (day->day < 10 ? "-0" : "-") +
                                         std::to_string(day->day);
                CHECK(core::Date::parse(text)); // a day of the calendar
            }
        CHECK(rule.limits.size() == 1);
    }
}

} // namespace test
