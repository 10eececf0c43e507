// Limits of the food programs for breakfast cereal and yogurt as rows: WIC and CACFP, before and since their last rule.
#pragma once

#include "core/label/label.h"
#include "core/rules/reference_amounts.h"
#include "core/rules/rule.h"

#include <optional>
#include <span>

namespace core {

/// All rows. Each is about the figures that it names: a program asks more of a food (whole grain, iron ...), and for
/// WIC the State's own list decides. Rows and sources: core/rules/programs_table.cpp.
///
/// They are judged by the figures as printed, because that is how the programs have their operators do it (divide the
/// sugars on the label by the serving size in grams: FNS, CACFP training on breakfast cereal). Answer tells where the
/// true content behind the printed figure might say otherwise.
[[nodiscard]] std::span<const Rule> program_rules();

/// Why a program's rule cannot be held against this food; nothing when it can.
[[nodiscard]] std::optional<Reason> not_for_program(RuleFood rule_food, const ReferenceAmount* food);

} // namespace core
