// A printed ingredient list taken apart: its ingredients in order, with what stands in brackets behind them, and the
// statements that stand in the same text. Source: 21 CFR 101.4 (order by weight, brackets for what an ingredient is
// made of, "contains 2 percent or less of"); FD&C Act 403(w)(1)(A), 21 U.S.C. 343(w)(1)(A) (the "Contains" statement).
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace core {

/// One ingredient as printed.
struct Ingredient {
    std::string printed;               ///< "enriched wheat flour": without brackets and footnote marks; never empty
    std::size_t depth = 0;             ///< how many brackets it stands in
    std::optional<std::size_t> within; ///< the ingredient in whose brackets it stands
    bool little = false;               ///< behind "contains 2% or less of"
    std::size_t list = 0;              ///< 0, or 1 in the text's second language
    bool operator==(const Ingredient&) const = default;
};

/// A list taken apart. What was not understood is an ingredient or a footnote: nothing of the text is lost.
struct IngredientList {
    std::vector<Ingredient> all;          ///< in the order of the text: an ingredient, then what it is made of
    std::vector<std::string> contains;    ///< "wheat, milk": what stands behind "Contains" in this text
    std::vector<std::string> may_contain; ///< "May contain almonds", "Made in a plant that uses milk": as printed
    std::vector<std::string> footnotes;   ///< "Organic", "Contains no sulfites"
    bool cut = false;                     ///< it was longer than is read
    bool operator==(const IngredientList&) const = default;
};

/// Bytes of a list that are read; what stands behind them is left out, and `cut` says so.
inline constexpr std::size_t longest_ingredient_list = 10'000;

/// Takes a printed list apart. Never fails: brackets of any kind may be nested, unlike or left open.
[[nodiscard]] IngredientList take_apart(std::string_view printed);

/// The ingredients that are made of partially hydrogenated oil, as printed: "partially hydrogenated soybean oil". Such
/// an oil must be named so (21 CFR 101.4(b)(14)). Knows the English spellings and the Spanish word.
[[nodiscard]] std::vector<std::string> partially_hydrogenated(const IngredientList& list);

} // namespace core
