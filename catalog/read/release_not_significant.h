// "Not a significant source of trans fat, added sugars ...", as a release writes it.
// Source: 21 CFR 101.9(c)(1) to (c)(8), the sentence on that statement in each paragraph.
#pragma once

#include "core/label/nutrient.h"

#include <set>
#include <string_view>

namespace catalog {

/// The nutrients that a statement names, whatever words stand around them.
[[nodiscard]] std::set<core::Nutrient> read_not_significant(std::string_view statement);

} // namespace catalog
