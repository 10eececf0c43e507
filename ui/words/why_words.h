// Where a figure and its finding come from, in the words that a class would use on paper.
#pragma once

#include "core/compare/comparison.h"
#include "core/compare/why.h"
#include "core/product.h"
#include "ui/words/language.h"

#include <optional>
#include <string>
#include <vector>

namespace ui {

/// One line of it.
struct WhyLine {
    bool heading = false;
    std::string words;
    bool operator==(const WhyLine&) const = default;
};

/// All of it, in reading order.
struct WhyWords {
    std::string title;
    std::string what; ///< what the line is at all, in one sentence
    std::vector<WhyLine> lines;
    bool operator==(const WhyWords&) const = default;
};

/// A row of a pair: both sides' steps, the finding, what puzzles people, the sources. `nutrient` must be a row of it.
[[nodiscard]] WhyWords why_words(const core::Comparison& comparison, core::Nutrient nutrient, const core::Product& left,
                                 const core::Product& right, const core::Choices& choices, const Language& language);

/// A line of one label by itself.
[[nodiscard]] WhyWords why_words(const core::Product& product, core::Nutrient nutrient, const core::Choices& choices,
                                 const Language& language);

/// Serving size and servings of one label.
[[nodiscard]] WhyWords sizes_why_words(const core::Product& product, const Language& language);

/// An exact amount in the nutrient's unit, to as many places as tell its edges apart, rounded the way its end of a
/// range needs: "3.25 g".
[[nodiscard]] std::string exact_words(core::Content amount, core::Nutrient nutrient, bool up);

/// One step in one sentence; empty for a step that needs none.
[[nodiscard]] std::string step_words(const core::Step& step, core::Nutrient nutrient, const core::Label& label,
                                     core::Basis basis, const Language& language);

} // namespace ui
