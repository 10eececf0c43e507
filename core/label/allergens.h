// The nine major allergens that a label names: in its "Contains" statement and in its ingredients, each told apart. It
// tells what stands there, never that something does not. Source: FD&C Act 201(qq) and 403(w), 21 U.S.C. 321(qq) and
// 343(w); FASTER Act of 2021, Public Law 117-11 (sesame).
#pragma once

#include "core/label/ingredients.h"
#include "core/label/label.h"
#include "core/origin.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace core {

/// The nine major food allergens, FD&C Act 201(qq)(1).
enum class Allergen { Milk, Egg, Fish, Crustaceans, TreeNuts, Peanuts, Wheat, Soybeans, Sesame };

/// How many there are.
inline constexpr std::size_t allergen_count = 9;

/// Where a label was found to name an allergen, the surest first.
enum class AllergenPlace {
    Statement,       ///< the "Contains" statement that was entered as such
    StatementInText, ///< a "Contains" statement that stands in the text of the ingredients
    Ingredients,     ///< an ingredient is it, or holds it
    InDoubt,         ///< an ingredient that sometimes holds it
    MayContain,      ///< a note such as "may contain", which no law asks for
};

/// One naming of an allergen.
struct AllergenNaming {
    Allergen allergen;
    AllergenPlace place;
    std::string printed; ///< the words that say so: "soy lecithin"
    bool operator==(const AllergenNaming&) const = default;
};

/// What a label names. It may name too little: nothing in here says that a food is free of anything.
struct AllergenReading {
    std::vector<AllergenNaming> named; ///< by allergen, then by place; each naming once
    bool statement_recorded = false;   ///< that the label has a statement, or has none, was entered
    std::string statement;             ///< as entered; may be empty
    std::string statement_in_text;     ///< a statement that stands in the text of the ingredients; may be empty
    std::string may_contain;           ///< notes such as "May contain almonds", as printed; may be empty
    bool ingredients_recorded = false;
    bool sesame_need_not_be_named = false; ///< entered before sesame had to be named
    bool operator==(const AllergenReading&) const = default;

    /// Whether the label names it there.
    [[nodiscard]] bool names(Allergen allergen, AllergenPlace place) const;
};

/// Reads a label that was entered on that day; `list` is its ingredients taken apart.
[[nodiscard]] AllergenReading allergens_of(const Label& label, const IngredientList& list, Date entered_on);

/// Reads a label that was entered on that day.
[[nodiscard]] AllergenReading allergens_of(const Label& label, Date entered_on);

/// The day from which sesame must be named: 2023-01-01 (FASTER Act of 2021).
[[nodiscard]] Date sesame_named_from();

} // namespace core
