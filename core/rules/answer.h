// The answer of one label to one rule: whether the rule is for this food, then its limits one by one.
#pragma once

#include "core/label/label.h"
#include "core/rules/reference_amounts.h"
#include "core/rules/rule.h"

namespace core {

/// What this label says to this rule. `food` is the row of the food's reference amount, or nullptr where the product's
/// entry names none.
///
/// Meets only when every value that the figures can stand for meets every limit; DoesNotMeet as soon as no such value
/// meets one of them; else CannotTell, with the first limit in doubt. A rule that also asks for a reference food or for
/// words on the package can fail by its figures, but never be met by a label alone. None of the answers is a verdict on
/// the food or an advice.
[[nodiscard]] Answer answer_to(const Rule& rule, const Label& label, const ReferenceAmount* food);

} // namespace core
