// The rounding rules of tests/core/brute/prints.h, with halves up, as functions to hold core's engine against.
#pragma once

#include "core/label/format.h"
#include "core/label/nutrient.h"
#include "tests/core/brute/prints.h"

#include <cstdint>
#include <functional>
#include <set>
#include <string>
#include <vector>

namespace test {

/// A number in billionths of a gram, calorie, percent or serving, and whether "less than" stands before it.
using Print = brute::Print;

/// Everything that a label may print for a true amount in billionths; independent of core's engine and its tables.
using Lawful = std::function<std::set<Print>(std::int64_t)>;

/// A rule to try by brute force: its source, how fine the grid is and how far it goes (billionths).
struct LawfulRule {
    std::string source;
    Lawful lawful;
    std::int64_t grid;
    std::int64_t most;
    std::int64_t finest; ///< the finest step that is ever printed
};

/// Calories, fats, cholesterol, sodium, carbohydrates and fluoride, with one nutrient that each rule is for.
struct NutrientRule {
    core::Nutrient nutrient;
    core::Panel panel;
    LawfulRule rule;
};

/// The rules of amounts that go in bands.
[[nodiscard]] std::vector<NutrientRule> nutrient_rules();

/// The rules of vitamins and minerals: to the Code's place, the guidance's or a finer one, and 0 below 2 percent.
[[nodiscard]] std::vector<NutrientRule> vitamin_rules();

/// Whole percents: 21 CFR 101.9(d)(7)(ii).
[[nodiscard]] LawfulRule whole_percent_rule();

/// Percents of vitamins and minerals: 21 CFR 101.9(c)(8)(iii).
[[nodiscard]] LawfulRule vitamin_percent_rule();

/// Servings per container with "about": 21 CFR 101.9(b)(8)(i).
[[nodiscard]] LawfulRule servings_rule();

/// The metric serving size: 21 CFR 101.9(b)(7)(ii).
[[nodiscard]] LawfulRule serving_size_rule();

} // namespace test
