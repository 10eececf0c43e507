// How two products are made comparable, and why that may not be possible.
#pragma once

#include "core/label/household.h"
#include "core/label/label.h"

#include <vector>

namespace core {

/// The amount of each food that is set side by side.
enum class Basis {
    Serving,     ///< one serving as each label defines it: the sizes may differ
    Package,     ///< the whole package
    SameAmount,  ///< 100 g or 100 mL of each
    SameMeasure, ///< the same cup, spoon or piece of each
    MyAmount,    ///< what somebody means to eat
    Prepared,    ///< one serving as prepared, where both labels print that
};

/// All of them, in the order in which they are offered.
inline constexpr Basis all_bases[] = {Basis::Serving,     Basis::Package,  Basis::SameAmount,
                                      Basis::SameMeasure, Basis::MyAmount, Basis::Prepared};

/// So much of each: "2 servings", "1 1/2 cups", "5 pieces", "half of the package".
struct MyAmount {
    enum class Of { Servings, Cups, Tablespoons, Pieces, Package };
    Of of = Of::Servings;
    Ratio times{1, 1};
    bool operator==(const MyAmount&) const = default;
};

/// The amount is one that is taken: above 0, at most 100, to eighths or thirds.
[[nodiscard]] bool is_sound(const MyAmount& amount);

/// Why something is not compared. Each has its own sentence in ui/words/.
enum class Why {
    Comparable,
    UnlikeAudience,          ///< a label for ages 1-3 or infants against another (21 CFR 101.9(c)(9))
    GramsAgainstMillilitres, ///< weight against volume
    NoMetricServing,         ///< a serving size without grams or millilitres
    NoHouseholdMeasure,      ///< a serving size without cups, spoons or pieces
    UnlikeMeasures,          ///< cups against pieces, or pieces of two kinds
    NotPrepared,             ///< a label without figures for the food as prepared
    ServingsVaried,          ///< "servings varied": there is no number to multiply by
    ServingsNotPrinted,
    ServingsOffTheRule,     ///< "about 5.5": no number that 21 CFR 101.9(b)(8)(i) prints
    ServingsAgainstNet,     ///< servings times serving size is not the net quantity
    FigureOffTheRule,       ///< a figure that the rounding rule never prints
    AmountAgainstPercent,   ///< amount and percent of one line cannot both be true
    PartAgainstWhole,       ///< more of a part than of the whole
    FigureWorkedBack,       ///< a figure worked back from an amount per 100: the package may print another
    PercentsOfUnlikeLabels, ///< only percents, and they count from different Daily Values
};

/// How the two serving sizes stand to each other.
enum class ServingSizes { Same, Differ, Unlike, Unknown };

/// Whether two labels can be compared on this basis at all, and if not, why.
[[nodiscard]] Why comparable_on(Basis basis, const Label& left, const Label& right, const MyAmount& amount = {});

/// The bases on which the two can be compared, in the order of `all_bases`; what to offer where one cannot be.
[[nodiscard]] std::vector<Basis> possible_bases(const Label& left, const Label& right);

/// The measure that both servings can be told in, for Basis::SameMeasure; nothing where there is none. Fluid ounces
/// and cups meet in cups, spoons with cups in tablespoons.
[[nodiscard]] std::optional<Household> common_measure(const Label& left, const Label& right);

/// The printed metric serving sizes side by side.
[[nodiscard]] ServingSizes serving_sizes(const Label& left, const Label& right);

} // namespace core
