// Prints a true food as a label by any of the choices that the rules leave to a maker.
#pragma once

#include "core/label/label.h"
#include "tests/core/compare/true_food.h"

namespace test {

/// A label of a true food.
struct PrintedFood {
    core::Label label;
    bool half_down = false; ///< somewhere a half was rounded down: a true value sits on an edge that ranges leave out
};

/// What two labels have in common for a comparison to be made.
struct Style {
    brute::Halves halves = brute::Halves::Up;
    core::Audience audience = core::Audience::Adult;
    bool millilitres = false;
    bool older = true;                 ///< labels of before 2016 as well
    std::vector<core::Nutrient> lines; ///< printed, or at times left out
};

/// Lines that sharpen each other, or now and then all of them.
[[nodiscard]] std::vector<core::Nutrient> random_lines(Dice& dice);

/// Prints the food: panel, percent from true or printed amount, "less than", "not a significant source of", amount or
/// percent alone, "about", net quantity cut or rounded, a second column: as the dice fall.
[[nodiscard]] PrintedFood print_food(const TrueFood& food, const Style& style, Dice& dice);

} // namespace test
