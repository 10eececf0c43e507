// The sugars of an ingredient list, by all their names. Source: 21 CFR 101.9(c)(6)(iii): added sugars are free mono-
// and disaccharides, sugars from syrups and honey, and sugars of concentrated juice beyond those of the same amount of
// juice.
#pragma once

#include "core/label/ingredients.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace core {

/// A phrase of an ingredient list that is a sugar, or only sounds like one.
struct SugarRow {
    enum class Kind {
        Sugar,
        Juice, ///< concentrated juice: counts in part
        None,  ///< no sugar: "sugar snap peas", "maltitol syrup"
    };
    std::string_view words;
    Kind kind;
    std::string_view source; ///< what is published; "common practice" where nothing is
};

/// All rows. "Sugar", "syrup" and "juice concentrate" stand there alone, so any kind of them is found.
[[nodiscard]] std::span<const SugarRow> sugar_rows();

/// A sugar that a list names.
struct NamedSugar {
    std::string printed; ///< "organic cane sugar"
    SugarRow::Kind kind; ///< Sugar or Juice
    std::string_view source;
    bool operator==(const NamedSugar&) const = default;
};

/// The sugars of the list in its order, each name once; of its first language where it has two. A list that names none
/// may hold sugars all the same: those of fruit and milk.
[[nodiscard]] std::vector<NamedSugar> sugars_in(const IngredientList& list);

} // namespace core
