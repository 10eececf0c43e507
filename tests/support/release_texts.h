// Invented names, makers and lists of ingredients, in any number, and as varied as real ones.
#pragma once

#include <cstdint>
#include <random>
#include <string>

namespace test {

using Dice = std::mt19937_64;

/// A whole number below `sides`; the same on every machine.
[[nodiscard]] inline std::uint64_t roll(Dice& dice, std::uint64_t sides)
{
    return dice() % sides;
}

/// True once in `sides` thousandths.
[[nodiscard]] inline bool happens(Dice& dice, std::uint64_t thousandths)
{
    return roll(dice, 1000) < thousandths;
}

/// "HONEY OAT CLUSTERS WITH QUINTARA ALMONDS": forty letters on average.
[[nodiscard]] std::string food_name(Dice& dice);

/// "Branvale Foods, Inc.": some are far more common than others.
[[nodiscard]] std::string maker_name(Dice& dice);

/// "Quintara".
[[nodiscard]] std::string brand_name(Dice& dice);

/// A list of ingredients of 280 letters on average, up to some thousands.
[[nodiscard]] std::string ingredient_list(Dice& dice);

/// One of the release's categories.
[[nodiscard]] const char* food_category(Dice& dice);

} // namespace test
