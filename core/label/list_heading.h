// The words within an ingredient text that begin another part of it: a new list, a "Contains" statement, a note on what
// may be in it, small amounts. Knows English, and the Spanish and French words of packages in two languages.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace core {

/// What begins at a place of an ingredient text.
struct ListHeading {
    enum class Kind {
        List,       ///< "INGREDIENTS:"
        Contains,   ///< "Contains:", "Allergens:"
        MayContain, ///< "May contain", "Made in a facility that"
        Little,     ///< "Contains 2% or less of"
        Footnote,   ///< "*", "Contains no"
    };
    Kind kind;
    std::size_t size;     ///< bytes of the heading; 0 where its words belong to what follows: "Made in a facility"
    bool colon;           ///< it ends in a colon
    bool spanish = false; ///< it is the Spanish word for a list
    bool operator==(const ListHeading&) const = default;
};

/// The heading that this text begins with. Looks at its first words only, however long it is.
[[nodiscard]] std::optional<ListHeading> heading_of(std::string_view text);

} // namespace core
