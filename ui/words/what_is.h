// Words of the trade that stand on shoppers' screens, each with one sentence that says what it is.
#pragma once

#include "core/label/nutrient.h"
#include "ui/words/language.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace ui {

/// A word and its sentence by their texts, and where what the sentence says is published.
struct WhatIs {
    TextId term;     ///< the word; behind bars its other forms: "Serving size|serving"
    TextId sentence; ///< exactly one
    std::string_view source;
};

/// Every word that is explained, in the order in which it is taught. Rows: ui/words/what_is_table.cpp.
[[nodiscard]] std::span<const WhatIs> what_is_table();

/// The sentence about a nutrient.
[[nodiscard]] const std::string& what_is(core::Nutrient nutrient, const Language& language);

/// "What is this? Sodium is a mineral that ...": for the head of what is told about one line.
[[nodiscard]] std::string what_is_this(const std::string& sentence, const Language& language);

/// A word as people see it, and what it means.
struct Meaning {
    std::string word;
    std::string sentence;
    bool operator==(const Meaning&) const = default;
};

/// All of them.
[[nodiscard]] std::vector<Meaning> all_meanings(const Language& language);

/// Those of words that stand in these texts in any of their forms; letter case and accents make no difference.
[[nodiscard]] std::vector<Meaning> meanings_in(const std::vector<std::string>& texts, const Language& language);

} // namespace ui
