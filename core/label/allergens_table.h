// One row of the table of words that name an allergen, may hold one, or only sound like one.
#pragma once

#include "core/label/allergens.h"

#include <span>
#include <string_view>

namespace core {

/// A phrase of an ingredient list and what it says of one allergen.
struct AllergenRow {
    enum class Kind {
        Names,   ///< it is the allergen, or holds it
        MayHold, ///< sometimes it does: the word alone does not tell
        NotThis, ///< it sounds like it and is something else: "coconut milk"
    };
    std::string_view words;
    Allergen allergen;
    Kind kind;
    std::string_view source; ///< what is published; "common practice" where nothing is
};

/// All rows.
[[nodiscard]] std::span<const AllergenRow> allergen_rows();

} // namespace core
