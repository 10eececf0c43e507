// True foods, whose contents no label tells exactly, and how two of them really stand to each other.
#pragma once

#include "core/compare/basis.h"
#include "core/label/nutrient.h"
#include "tests/core/brute/prints.h"

#include <array>
#include <cstdint>
#include <random>
#include <vector>

namespace test {

/// Chance with a few words.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : engine_(seed) {}
    /// From low to high, both included.
    std::int64_t between(std::int64_t low, std::int64_t high)
    {
        return low + static_cast<std::int64_t>(engine_() % static_cast<std::uint64_t>(high - low + 1));
    }
    bool one_in(std::int64_t times) { return between(1, times) == 1; }

private:
    std::mt19937_64 engine_;
};

/// What is in one serving, by nutrient, in billionths of a gram or calorie.
using Contents = std::array<std::int64_t, core::nutrient_count>;

/// A food as it is.
struct TrueFood {
    Contents serving{};
    Contents prepared{};          ///< one serving with what the package says to add
    std::int64_t size = 0;        ///< of one serving, in billionths of a gram or millilitre
    std::int64_t servings = 0;    ///< in the package, in billionths
    core::Household::Unit unit{}; ///< what a serving is told in
    core::Ratio count{};          ///< and truly how many of it

    [[nodiscard]] std::int64_t of(core::Nutrient nutrient) const { return serving[static_cast<std::size_t>(nutrient)]; }
    /// What is in the package, where that comes to whole billionths.
    [[nodiscard]] Contents package() const;
    /// What the whole package weighs, in billionths of billionths of a gram.
    [[nodiscard]] brute::Wide net() const { return brute::Wide{size} * servings; }
};

/// No part is more than what it is part of, and the parts of one whole are together no more than that. Pushes down the
/// parts that are. Source: 21 CFR 101.9(c)(2) and (c)(6).
void make_consistent(Contents& contents);

/// A food with contents on and beside the steps of labels.
[[nodiscard]] TrueFood random_food(Dice& dice);

/// A food that is hard to tell from another one: a little more or less of everything.
[[nodiscard]] TrueFood neighbour(const TrueFood& food, Dice& dice);

/// Below 0: the left food truly has less in the amount of the basis; above 0: more. Exact, crosswise.
[[nodiscard]] int order(const TrueFood& left, const TrueFood& right, core::Nutrient nutrient, core::Basis basis,
                        const core::MyAmount& amount);

} // namespace test
