// Looks for a true food with as little, or as much, of a nutrient as a label allows: the witness that "too close to
// tell" is not said out of timidity. What it finds is held against the label by the printing rules of tests/core/brute.
#pragma once

#include "core/compare/comparison.h"
#include "tests/core/compare/true_food.h"

#include <optional>

namespace test {

/// What a witness is looked for.
struct Search {
    const core::Label& label;
    const core::SharpLabel& sharp; ///< where to look; what is found there is checked without it
    const TrueFood& printed_from;  ///< for the household measure, which is exact without "about"
    core::Nutrient nutrient;
    core::Basis basis;
    core::MyAmount amount;
};

/// How strictly a food is held against a label.
struct Strictness {
    bool finer_sizes = true;  ///< a serving size printed finer than the rule asks for is rounded to what is printed
    bool both_columns = true; ///< the column per container tells of the same food
    bool sums = true;         ///< parts are together no more than their whole
};

/// Whether this food may be printed as exactly this label; halves up, but either way for a percent counted from a
/// printed amount.
[[nodiscard]] bool may_print(const TrueFood& food, const core::Label& label, const Strictness& strictness);

/// The same of one line alone.
[[nodiscard]] bool line_may_print(const core::Label& label, const core::Column& column, core::Nutrient nutrient,
                                  std::int64_t content);

/// The same of its sizes alone.
[[nodiscard]] bool sizes_may_print(const TrueFood& food, const core::Label& label, const Strictness& strictness);

/// A food with as much of the nutrient in the amount of the basis as the label allows, or as little; nothing where none
/// was found that prints it.
[[nodiscard]] std::optional<TrueFood> extreme(const Search& search, bool most, const Strictness& strictness);

} // namespace test
