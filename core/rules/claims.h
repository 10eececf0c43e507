// Nutrient content claims as rows: 21 CFR 101.13(h), 101.54, 101.56, 101.60, 101.61 and 101.62.
#pragma once

#include "core/label/label.h"
#include "core/rules/reference_amounts.h"
#include "core/rules/rule.h"

#include <optional>
#include <span>

namespace core {

/// All rows, in the order of the sections; "high", "good source" and "high potency" once for each nutrient. They are
/// about figures alone: whether a package may carry the claim hangs on more. Rows: core/rules/claims_table.cpp.
[[nodiscard]] std::span<const Rule> claim_rules();

/// Why a claim's rule cannot be held against this food at all; nothing when it can. No label tells whether a food is a
/// meal or main dish product, so a mixed dish of 6 oz or more a serving may be one (21 CFR 101.13(m)).
[[nodiscard]] std::optional<Reason> not_for_claim(RuleFood rule_food, const Label& label, const ReferenceAmount* food);

} // namespace core
