// What one label says of a nutrient on one basis: the figure to show, and the exact range for crosswise comparison.
#pragma once

#include "core/compare/basis.h"
#include "core/compare/comparison.h"
#include "core/compare/factor.h"
#include "core/label/sharpen.h"

#include <optional>

namespace core {

/// A label and what its figures allow, read once for all rows.
struct ReadLabel {
    const Label& label;
    const SharpLabel& sharp;
};

/// One side of a row before the two are held against each other.
struct Measured {
    Shown shown;
    std::optional<Range<Content>> content; ///< of what the label prints; of a nominal Daily Value it is a share only
    Scale scale;                           ///< from there to the basis
    Why why = Why::Comparable;             ///< why there is no content; Comparable: the amount is simply not printed
    bool multiplied = true;                ///< false where the label itself prints the figure for this basis
};

/// What a comparison is made on, the same for all rows and both sides.
struct Ground {
    Basis basis = Basis::Serving;
    MyAmount amount;                  ///< for Basis::MyAmount
    std::optional<Household> measure; ///< for Basis::SameMeasure
};

/// Whether a column prints or names a nutrient at all.
[[nodiscard]] bool prints(const Column& column, Nutrient nutrient);

/// The column that a basis is read from: the package's own, the one as prepared, else the one per serving.
[[nodiscard]] const Column& column_for(const Label& label, Nutrient nutrient, Basis basis);

/// The line of that column read backwards.
[[nodiscard]] const Backwards& backwards(const ReadLabel& side, Nutrient nutrient, Basis basis);

/// One side of one row. `nominal` stands for a Daily Value that the tables do not hold (content_behind.h).
[[nodiscard]] Measured measured(const ReadLabel& side, Nutrient nutrient, const Ground& ground,
                                std::optional<Content> nominal);

} // namespace core
