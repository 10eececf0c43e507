// Where a figure comes from: its arithmetic as data, without words. Screen, voice, paper and JSON word the same steps.
#pragma once

#include "core/compare/measured.h"

#include <optional>
#include <string_view>
#include <vector>

namespace core {

/// One step from the printed line to the figure that is shown and the range behind it.
struct Step {
    enum class Kind {
        Printed,           ///< the line as the label prints it: `line`
        NotPrinted,        ///< absent, never 0
        NotSignificant,    ///< "not a significant source of": `range` from 0 to what may be left out
        AmountStandsFor,   ///< `range` behind the printed amount
        PercentStandsFor,  ///< `range` of amounts behind the printed percent of `daily`
        PercentOfAmount,   ///< the percent is only the printed amount over again
        Together,          ///< `range`: what amount and percent allow together
        NoMoreThanWhole,   ///< `range` after `other`, which holds it, cut its upper end
        NoLessThanPart,    ///< `range` after `other`, a part of it, raised its lower end
        Contradicts,       ///< see `contradiction` and `other`: it is not compared
        ServingStandsFor,  ///< `span` of grams or millilitres behind the printed serving size
        ServingsStandFor,  ///< `span` of servings in the package
        Times,             ///< printed amount times `times` is `figure`
        PercentTimes,      ///< printed percent times `times` is `percent`
        PercentFromAmount, ///< `percent` is counted from the amount on this basis, before it is rounded, over `daily`
        OnBasis,           ///< `range` on the basis
        PercentOnBasis,    ///< `percents` on the basis
    };
    Kind kind;
    std::string_view citation; ///< the paragraph of the rule; empty where it is plain arithmetic
    std::optional<Line> line;
    std::optional<Range<Content>> range;
    std::optional<Range<Percent>> percents;
    std::optional<Content> daily;
    std::optional<Nutrient> other;
    std::optional<Contradiction> contradiction;
    std::optional<Span> span;
    bool narrowed = false; ///< a size that net quantity and the other size made narrower
    std::optional<Ratio> times;
    std::optional<Figure> figure;
    std::optional<int> percent;
};

/// The steps of one side of a row on a basis, in order.
[[nodiscard]] std::vector<Step> steps_of(const ReadLabel& side, Nutrient nutrient, const Ground& ground);

/// The steps behind the sizes of a label: serving size, then servings per container, where they have a number.
[[nodiscard]] std::vector<Step> sizes_steps(const ReadLabel& side);

/// The paragraph by which an amount of this nutrient is rounded.
[[nodiscard]] std::string_view rounding_citation(Nutrient nutrient, Panel panel);

/// The paragraph that sets its Daily Value.
[[nodiscard]] std::string_view daily_value_citation(Nutrient nutrient, Panel panel);

/// A value that both sides can hold on their basis, when they are too close to tell; in the nutrient's base unit.
[[nodiscard]] std::optional<Content> common_value(const Shown& left, const Shown& right);

} // namespace core
