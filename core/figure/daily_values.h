// The Daily Value of a nutrient by label and age group. Source: 21 CFR 101.9(c)(8)(iv) and (c)(9).
#pragma once

#include "core/figure/amount.h"
#include "core/label/format.h"
#include "core/label/nutrient.h"

#include <optional>

namespace core {

/// The Daily Value, in the nutrient's base unit; nothing where the rule sets none (trans fat, total sugars ...).
[[nodiscard]] std::optional<Content> daily_value(Nutrient nutrient, Panel panel, Audience audience);

} // namespace core
