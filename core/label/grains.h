// The first grain of an ingredient list: whole or not, by published lists of words. Ingredients stand in order of
// weight (21 CFR 101.4(a)(1)), so the first grain is the one that weighs most.
#pragma once

#include "core/label/ingredients.h"

#include <span>
#include <string>
#include <string_view>

namespace core {

/// What the words of the first grain say.
struct FirstGrain {
    enum class Kind {
        Whole,            ///< "whole wheat flour", "oats"
        NotWhole,         ///< "enriched flour", "wheat bran", a bare "wheat"
        CountsInPrograms, ///< "masa harina": counts as whole in child nutrition programs, by a memo of the USDA
        Unclear,          ///< "rice", "multigrain": the words do not tell
        NoneNamed,        ///< no word for a grain that is known here
    };
    Kind kind = Kind::NoneNamed;
    std::string matched;     ///< the words that decided it, as printed; empty where none is named
    std::string ingredient;  ///< the ingredient in which they stand
    std::string_view source; ///< where it is published that these words say so; empty where none is named
    bool operator==(const FirstGrain&) const = default;
};

/// The first grain of the list; of its first language where it has two.
[[nodiscard]] FirstGrain first_grain(const IngredientList& list);

/// A phrase of an ingredient list and what it says of its grain.
struct GrainRow {
    enum class Means {
        Whole,
        NotWhole,
        BareName, ///< not whole, unless what stands in its brackets says more: "flour (whole wheat)"
        Milling,  ///< tells how it was milled; counts only where nothing else names a grain
        Program,  ///< counts as whole in child nutrition programs
        Unclear,
        NoGrain, ///< passed over: a part of a grain that is no grain ingredient, or another plant
    };
    std::string_view words;
    Means means;
    std::string_view source;
};

/// All rows; phrases such as "whole (name of a grain)" are no rows, see grain_names.
[[nodiscard]] std::span<const GrainRow> grain_rows();

/// The grains whose name makes a whole grain with "whole" or "whole grain" before it, "berries" or "groats" behind it.
[[nodiscard]] std::span<const std::string_view> grain_names();

} // namespace core
