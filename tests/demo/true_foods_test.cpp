// The true foods themselves: possible as foods, and packed and served as the rule on serving sizes has it.
#include "core/figure/wide.h"
#include "tests/demo/demo_files.h"
#include "tests/demo/label_printer.h"
#include "tests/support/reference_table.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <set>

namespace test::demo {
namespace {

using N = core::Nutrient;

std::int64_t of(const TrueFood& food, N nutrient)
{
    const auto found = food.per_hundred.find(nutrient);
    return found == food.per_hundred.end() ? 0 : found->second.nano();
}

/// Twelfths of a cup in "1 1/4 cups"; 0 where it is not told in cups.
std::int64_t twelfths_of_a_cup(const std::string& household)
{
    const auto end = household.find(" cup");
    if (end == std::string::npos)
        return 0;
    std::int64_t twelfths = 0;
    for (std::size_t from = 0; from < end;) {
        const auto to = std::min(household.find(' ', from), end);
        const std::string part = household.substr(from, to - from);
        const auto slash = part.find('/');
        twelfths += slash == std::string::npos ? 12 * std::stoll(part)
                                               : 12 * std::stoll(part) / std::stoll(part.substr(slash + 1));
        from = to + 1;
    }
    return twelfths;
}

} // namespace

TEST_CASE("demo: no part of a true food is more than the whole")
{
    for (const auto& food : true_foods()) {
        CAPTURE(food.name);
        const auto fats = of(food, N::SaturatedFat) + of(food, N::TransFat) + of(food, N::PolyunsaturatedFat) +
                          of(food, N::MonounsaturatedFat);
        const auto carbohydrates = of(food, N::DietaryFiber) + of(food, N::TotalSugars) + of(food, N::SugarAlcohol);
        CHECK(fats <= of(food, N::TotalFat));
        CHECK(carbohydrates <= of(food, N::TotalCarbohydrate));
        CHECK(of(food, N::AddedSugars) <= of(food, N::TotalSugars));
        CHECK(of(food, N::SolubleFiber) + of(food, N::InsolubleFiber) <= of(food, N::DietaryFiber));
        const auto in_all = of(food, N::TotalFat) + of(food, N::TotalCarbohydrate) + of(food, N::Protein);
        CHECK(in_all <= core::Content::whole(100).nano());
    }
}

// Source: 21 CFR 101.9(c)(1)(i)(B) to (F): 9 kcal a gram of fat, 4 of protein and of carbohydrate, less of fiber and of
// sugar alcohols.
TEST_CASE("demo: calories come from fat, carbohydrate and protein")
{
    for (const auto& food : true_foods()) {
        CAPTURE(food.name);
        const auto rest = 9 * of(food, N::TotalFat) + 4 * of(food, N::Protein);
        const auto all = 4 * of(food, N::TotalCarbohydrate);
        const auto indigestible = 4 * (of(food, N::DietaryFiber) + of(food, N::SugarAlcohol));
        const auto calories = of(food, N::Calories);
        CAPTURE(calories);
        CHECK(calories * 100 >= (rest + all - indigestible) * 98);
        CHECK(calories * 100 <= (rest + all) * 102);
    }
}

// Source: 21 CFR 101.12(b), tables 1 and 2.
TEST_CASE("demo: each food's reference amount is that of its row in the table")
{
    for (const auto& food : true_foods()) {
        CAPTURE(food.name);
        const auto rows = reference_rows("racc.csv", "category", food.reference_category);
        REQUIRE(rows.size() == 1);
        const auto& unit = rows[0]["unit"];
        const bool by_weight = unit == "g" && std::holds_alternative<core::Mass>(food.reference_amount);
        const bool by_volume = unit == "mL" && std::holds_alternative<core::Volume>(food.reference_amount);
        // Rows in cups and spoons weigh what this food weighs, and concentrates what makes one reference amount.
        const bool condensed = food.name.find("condensed") != std::string::npos;
        if (!condensed && (by_weight || by_volume))
            CHECK(std::to_string(nano_of(food.reference_amount) / 1'000'000'000) == rows[0]["reference_amount"]);
    }
}

// Source: 21 CFR 101.12(b), table 2, ready-to-eat cereals: below 20 g a cup 15 g, from 20 to below 43 g a cup 40 g,
// from 43 g a cup on and biscuits 60 g; 28 g or more fiber in 100 g: 40 g. 21 CFR 101.9(b)(5)(i) and (ix): cups in
// quarters and thirds, the one next to the reference amount, halfway goes up.
TEST_CASE("demo: cereals of all three weights a cup, each with the serving that follows from it")
{
    int light = 0;
    int middle = 0;
    int heavy = 0;
    for (const auto& food : true_foods()) {
        if (food.aisle != "Cereal")
            continue;
        CAPTURE(food.name);
        const auto reference = nano_of(food.reference_amount) / 1'000'000'000;
        const auto fiber = of(food, N::DietaryFiber);
        if (!food.weight_per_cup) {
            CHECK(food.household == "3 biscuits");
            CHECK(reference == 60);
            ++heavy;
            continue;
        }
        const auto cup = *food.weight_per_cup;
        const bool high_in_fiber = fiber >= core::Content::whole(28).nano();
        light += cup < core::Mass::whole(20);
        middle += cup >= core::Mass::whole(20) && cup < core::Mass::whole(43);
        heavy += cup >= core::Mass::whole(43);
        const std::int64_t expected = high_in_fiber                 ? 40
                                      : cup < core::Mass::whole(20) ? 15
                                      : cup < core::Mass::whole(43) ? 40
                                                                    : 60;
        CHECK(reference == expected);

        const auto off = [&](std::int64_t twelfths) {
            return std::abs(cup.nano() * twelfths - 12 * nano_of(food.reference_amount));
        };
        std::int64_t nearest = 3;
        for (std::int64_t twelfths = 3; twelfths <= 48; ++twelfths)
            if ((twelfths % 3 == 0 || twelfths % 4 == 0) && off(twelfths) <= off(nearest))
                nearest = twelfths;
        CHECK(twelfths_of_a_cup(food.household) == nearest);
        const auto weight = cup.nano() * nearest / 12;
        CHECK(std::abs(weight - nano_of(food.serving)) < 10'000'000); // a hundredth of a gram
    }
    CHECK(light == 4);
    CHECK(middle == 7);
    CHECK(heavy == 5);
}

// Source: 21 CFR 101.9(b)(6): a package below 200 percent of the reference amount is one serving. 21 CFR
// 101.9(b)(12)(i): from 200 to 300 percent a second column tells of the whole package; not where a column "as prepared"
// stands, nor for random weights. The older panel knew no such column.
TEST_CASE("demo: packages of one serving and of two or three are labelled as such")
{
    int single = 0;
    int two_columns = 0;
    for (const auto& food : true_foods()) {
        CAPTURE(food.name);
        if (food.servings == "varied")
            continue;
        const auto package = core::Wide{package_nano(food)} * 100;
        const auto reference = core::Wide{nano_of(food.reference_amount)};
        const bool below = package < 200 * reference;
        const bool up_to_three = !below && package <= 300 * reference;
        const bool per_container = food.second == core::SecondColumn::Kind::PerContainer;
        CHECK((food.servings == "single") == below);
        if (food.panel == core::Panel::Of2016)
            CHECK((up_to_three ? food.second.has_value() : !per_container));
        single += below;
        two_columns += per_container;
    }
    CHECK(single >= 10);
    CHECK(two_columns >= 4);
}

// Source: 21 CFR 101.9(f) and (f)(1): eight or more of fifteen in insignificant amounts; what prints as zero, and of
// carbohydrate, fiber and protein less than 1 g.
TEST_CASE("demo: only labels that may be simplified are")
{
    int found = 0;
    for (const auto& food : true_foods()) {
        if (!food.simplified || food.panel == core::Panel::Older)
            continue;
        CAPTURE(food.name);
        const auto label = printed_label(food, true_foods());
        const std::set may_be_below_one{N::TotalCarbohydrate, N::DietaryFiber, N::Protein};
        int insignificant = static_cast<int>(label.per_serving.not_significant.size());
        for (const auto& [nutrient, line] : label.per_serving.lines)
            if (core::info(nutrient).on_the_panel && line.amount)
                insignificant += (line.amount->amount == core::Content{}) ||
                                 (line.amount->less_than && may_be_below_one.contains(nutrient));
        CHECK(insignificant >= 8);
        ++found;
    }
    CHECK(found >= 5);
}

} // namespace test::demo
