// The bases in words: what stands on their buttons, and why one of them cannot be had.
#pragma once

#include "core/compare/comparison.h"
#include "ui/words/language.h"
#include "ui/words/text.h"

#include <optional>
#include <string>
#include <vector>

namespace ui {

/// One basis that can be chosen.
struct BasisWords {
    core::Basis basis;
    TextId id; ///< the fixed text of its button
    std::string words;
    bool opens = false; ///< leads to the screen of other amounts
    bool operator==(const BasisWords&) const = default;
};

/// The four to choose from beside a pair: one serving, the whole package, the same amount (100 g or 100 mL; the same
/// cup, spoon or piece where that was chosen or is all that can be had), and what leads to other amounts, under the
/// name of the one that holds. Why one cannot be had is said when it is chosen.
[[nodiscard]] std::vector<BasisWords> bases_words(const core::Comparison& comparison, const core::Label& left,
                                                  const core::Label& right, const Language& language);

/// A basis by its own name: "Same amount: 1 cup".
[[nodiscard]] BasisWords basis_named(core::Basis basis, const core::Label& left, const core::Label& right,
                                     const core::MyAmount& amount, const Language& language);

/// "2 servings", "1 1/2 cups", "half of the package".
[[nodiscard]] std::string my_amount_words(const core::MyAmount& amount, const Language& language);

/// The sentence for a reason; nothing for Comparable, and for what is said of one side with its figures.
[[nodiscard]] std::optional<TextId> why_text(core::Why why);

/// "What can be compared: one serving, whole package."; empty where nothing can.
[[nodiscard]] std::string offer_sentence(const core::Label& left, const core::Label& right, const Language& language);

/// A number of servings as it is said: "2.5", "1 1/3".
[[nodiscard]] std::string times_words(core::Ratio times);

} // namespace ui
