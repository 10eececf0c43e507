// How two products are made comparable, and why that may not be possible.
#pragma once

#include "core/label/label.h"

namespace core {

/// The amount of each food that is set side by side.
enum class Basis {
    Serving,    ///< one serving as each label defines it: the sizes may differ
    Package,    ///< the whole package
    SameAmount, ///< 100 g or 100 mL of each
};

/// Why something is not compared. Each has its own sentence in ui/words/.
enum class Why {
    Comparable,
    UnlikeAudience,          ///< a label for ages 1-3 or infants against another (21 CFR 101.9(c)(9))
    GramsAgainstMillilitres, ///< weight against volume
    NoMetricServing,         ///< a serving size without grams or millilitres
    ServingsVaried,          ///< "servings varied": there is no number to multiply by
    ServingsNotPrinted,
    ServingsOffTheRule,     ///< "about 5.5": no number that 21 CFR 101.9(b)(8)(i) prints
    FigureOffTheRule,       ///< a figure that the rounding rule never prints
    PercentsOfUnlikeLabels, ///< only percents, and they count from different Daily Values
};

/// How the two serving sizes stand to each other.
enum class ServingSizes { Same, Differ, Unlike, Unknown };

/// Whether two labels can be compared on this basis at all, and if not, why.
[[nodiscard]] Why comparable_on(Basis basis, const Label& left, const Label& right);

/// The printed metric serving sizes side by side.
[[nodiscard]] ServingSizes serving_sizes(const Label& left, const Label& right);

} // namespace core
