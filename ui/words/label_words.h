// One label in words, in the taught order: servings, serving size, calories, less of, more of, the rest, ingredients.
#pragma once

#include "core/compare/choices.h"
#include "core/product.h"
#include "ui/words/language.h"

#include <optional>
#include <string>
#include <vector>

namespace ui {

/// One piece of a label, in reading order.
struct LabelPiece {
    enum class Kind {
        Lead,     ///< a large fact: servings, serving size, calories
        Heading,  ///< "Look for less of"
        Figure,   ///< a nutrient with its amount, percent and reading
        Sentence, ///< explanation, ingredients, caution
    };
    Kind kind;
    std::string name;    ///< what it is: "Sodium", "Servings per container"
    std::string amount;  ///< "190 mg"; empty for headings and sentences
    std::string percent; ///< "8 %", or empty
    std::string reading; ///< "8 %, between 5 and 20", or empty
    std::optional<int> percent_value;
    std::optional<core::Nutrient> nutrient = {}; ///< of a figure that opens to where it comes from
    bool sizes = false;                          ///< serving size and servings, which do so together
    bool operator==(const LabelPiece&) const = default;
};

/// A label in words.
struct LabelWords {
    std::string name;
    std::string brand; ///< may be empty
    std::vector<LabelPiece> pieces;
    bool operator==(const LabelWords&) const = default;
};

/// Words one label.
[[nodiscard]] LabelWords label_words(const core::Product& product, const Language& language,
                                     const core::Choices& choices = {});

} // namespace ui
