// One limit of a rule held against one label: what the figure can stand for, in the amount that the limit speaks of.
#pragma once

#include "core/label/label.h"
#include "core/rules/reference_amounts.h"
#include "core/rules/rule.h"

namespace core {

/// What one limit says of one label.
struct Weighed {
    Verdict verdict; ///< never NotForThisFood
    Reason reason;
    Decided decided;
    bool true_content_agrees = true; ///< see Answer
    bool operator==(const Weighed&) const = default;
};

/// Holds one limit against one label, crosswise and without a division: content x amount against limit x serving size.
/// Meets when every value behind the figures meets, DoesNotMeet when none does, else CannotTell; a figure that is
/// missing or off the rule is never taken for 0.
///
/// The serving size is a rounded figure as well, so the content of another amount is wider than the figure's own
/// range. Where the printed serving size is the very amount that the limit speaks of, nothing is scaled: 21 CFR
/// 101.13(p)(1) and 101.12(g) hold the reference amount against the serving size declared on the label. A rule's ounces
/// are the serving where they print as the same grams.
///
/// JudgedBy::PrintedFigure takes the figure and the serving size as they stand there; a statement ("less than 1 g",
/// "not a significant source of") and a percent without an amount stay ranges.
[[nodiscard]] Weighed weigh(const Limit& limit, const Label& label, const ReferenceAmount* food, JudgedBy judged_by);

/// The same limit in 50 g of the food, for foods with a small reference amount.
[[nodiscard]] Limit in_fifty_grams(const Limit& limit);

} // namespace core
