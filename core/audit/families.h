// The families of audit rules, one file each; core/audit/audit.cpp runs them in this order.
#pragma once

#include "core/audit/doubt.h"
#include "core/audit/facts.h"

#include <vector>

namespace core::audited {

/// Lines by themselves: grid, amount against percent, slips of ten, swapped units, other Daily Values (lines.cpp).
void doubt_lines(const Facts& facts, std::vector<Doubt>& doubts);

/// Lines held against one another: parts and wholes, the weight of the serving, figures of 100 g (sums.cpp).
void doubt_sums(const Facts& facts, std::vector<Doubt>& doubts);

/// Calories against the published factors (energy.cpp).
void doubt_energy(const Facts& facts, std::vector<Doubt>& doubts);

/// Serving size, servings, net quantity, reference amount (serving_sizes.cpp).
void doubt_sizes(const Facts& facts, std::vector<Doubt>& doubts);

/// Takes out doubts that say again what a surer one explains: calories that are off because fat slipped.
void leave_out_what_follows(std::vector<Doubt>& doubts);

} // namespace core::audited
