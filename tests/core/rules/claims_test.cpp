// Which foods the rules speak of, and why a label cannot tell.
#include "core/rules/answer.h"
#include "core/rules/claims.h"
#include "core/rules/rule_sets.h"
#include "tests/support/label_maker.h"

#include <doctest/doctest.h>

#include <string>

namespace test {
namespace {

using core::Reason;
using core::Verdict;
using N = core::Nutrient;
using V = core::Verdict;

core::Answer ask(const std::string& rule, const std::string& food, const core::Label& label)
{
    const core::Rule* row = core::rule_by_key(rule);
    REQUIRE(row);
    const auto* amount = food.empty() ? nullptr : core::reference_amount(food);
    REQUIRE((food.empty() || amount));
    return core::answer_to(*row, label, amount);
}

} // namespace

TEST_CASE("rules: why a label cannot tell")
{
    struct Why {
        std::string why;
        std::string rule;
        std::string food;
        core::Label label;
        Verdict verdict;
        Reason reason;
    };
    core::Label infant = make_label("30 g", "", {{N::Sodium, "0"}});
    infant.audience = core::Audience::Ages1To3;
    core::Label cup = make_label("240 g", "", {{N::Sodium, "100"}});
    cup.serving.household = "1 Cup (240 g)";
    core::Label spoons = make_label("32 g", "", {{N::TotalFat, "0"}});
    spoons.serving.household = "3 tbsp";
    core::Label silent = make_label("245 g", "", {});
    silent.per_serving.not_significant.insert(N::TotalFat);
    const auto sodium = [](const char* serving, const char* amount) {
        return make_label(serving, "", {{N::Sodium, amount}});
    };
    const Why cases[] = {
        {"no reference food", "low_sodium", "", sodium("245 g", "10"), V::CannotTell, Reason::NoReferenceAmount},
        {"words for an amount", "low_sodium", "soup_mixes_dry", sodium("10 g", "10"), V::CannotTell,
         Reason::ReferenceAmountInWords},
        {"no serving size", "low_sodium", "soups", sodium("", "10"), V::CannotTell, Reason::NoServingSize},
        {"grams against millilitres", "low_sodium", "soups", sodium("240 mL", "10"), V::CannotTell,
         Reason::UnlikeMeasures},
        {"3 tbsp are not 2 tbsp", "low_fat", "nut_butters", spoons, V::CannotTell, Reason::UnlikeMeasures},
        {"the figure is absent", "low_fat", "soups", sodium("245 g", "10"), V::CannotTell, Reason::FigureNotPrinted},
        {"left out as not significant: below 0.5 g", "fat_free", "soups", silent, V::Meets, Reason::Figures},
        {"137 mg is no figure of a label", "low_sodium", "soups", sodium("245 g", "137"), V::CannotTell,
         Reason::FigureOffTheRule},
        {"made for small children", "low_sodium", "soups", infant, V::NotForThisFood, Reason::ForYoungChildren},
        {"a food for infants", "low_sodium", "infant_juices", sodium("120 mL", "0"), V::NotForThisFood,
         Reason::ForYoungChildren},
        {"against another food", "reduced_sodium", "soups", sodium("245 g", "10"), V::CannotTell,
         Reason::NeedsReferenceFood},
        {"how it was made", "no_salt_added", "soups", sodium("245 g", "10"), V::CannotTell, Reason::NeedsPackageWords},
        {"a pizza of 140 g is no main dish", "low_sodium", "mixed_dish_not_by_cup", sodium("140 g", "130"), V::Meets,
         Reason::Figures},
        {"one of 170 g may be", "low_sodium", "mixed_dish_not_by_cup", sodium("170 g", "130"), V::CannotTell,
         Reason::MayBeMainDish},
        {"a cup in grams is the cup of the rule, but may be a main dish", "low_sodium", "mixed_dish_by_cup", cup,
         V::CannotTell, Reason::MayBeMainDish},
        {"lean is for fish", "lean", "soups", sodium("245 g", "10"), V::NotForThisFood, Reason::OtherFood},
        {"no limit of a program is for soup", "cacfp_cereal_added_sugars", "soups", sodium("245 g", "10"),
         V::NotForThisFood, Reason::OtherFood},
    };
    for (const auto& c : cases) {
        CAPTURE(c.why);
        const auto answer = ask(c.rule, c.food, c.label);
        CHECK(static_cast<int>(answer.verdict) == static_cast<int>(c.verdict));
        CHECK(static_cast<int>(answer.reason) == static_cast<int>(c.reason));
    }
}

// Source: 21 CFR 101.62(d)(4) needs a reference food and at most 2 g of saturated fat: the figure alone can fail it.
TEST_CASE("rules: a claim against another food can fail by its own figure, and never be met")
{
    const auto saturated = [](const char* amount) { return make_label("245 g", "", {{N::SaturatedFat, amount}}); };
    CHECK(ask("reduced_cholesterol", "soups", saturated("2.5")).verdict == V::DoesNotMeet);
    CHECK(ask("reduced_cholesterol", "soups", saturated("0")).reason == Reason::NeedsReferenceFood);
}

// Limits that were not read in the rule: never answered by a figure.
TEST_CASE("rules: an unconfirmed limit gives no answer")
{
    for (const char* key : {"wic_cereal_added_sugars", "wic_yogurt_added_sugars", "wic_yogurt_vitamin_d"}) {
        CAPTURE(std::string(key));
        const bool yogurt = std::string(key).find("yogurt") != std::string::npos;
        const auto answer = ask(key, yogurt ? "yogurt" : "cereal_20_to_43_g_per_cup",
                                make_label("40 g", "", {{N::AddedSugars, "0"}, {N::VitaminD, "20"}}));
        CHECK(answer.verdict == V::CannotTell);
        CHECK(answer.reason == Reason::LimitNotConfirmed);
    }
}

} // namespace test
