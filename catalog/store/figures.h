// A column of figures as a few bytes, and back: a nation's labels have to fit on a stick.
// The form: for every line a nutrient's number, a byte of marks, then the amount in units of its last printed digit and
// the percent, both as varints (seven bits a byte, the lowest first).
#pragma once

#include "core/label/label.h"

#include <set>
#include <string>
#include <string_view>

namespace catalog {

/// The lines of a column, in the order of the panel.
[[nodiscard]] std::string figures_bytes(const core::Column& column);

/// Reads figures_bytes back into `column.lines`. Throws std::runtime_error for what figures_bytes never writes.
void read_figures_bytes(std::string_view bytes, core::Column& column);

/// A set of nutrients, a byte each.
[[nodiscard]] std::string nutrients_bytes(const std::set<core::Nutrient>& nutrients);

/// Reads nutrients_bytes back. Throws std::runtime_error for a number that stands for none.
[[nodiscard]] std::set<core::Nutrient> nutrients_of_bytes(std::string_view bytes);

/// Reads a column as catalogs of version 1 and 2 keep it: "sodium=<140000000/0,6;iron=,10" is less than 140 mg of
/// sodium with 6 %, and iron with nothing but 10 %. Amounts are in billionths, behind "/" stands the number of decimals
/// printed. Throws std::runtime_error for what was never written.
void read_figures_text(std::string_view text, core::Column& column);

/// Reads "sodium;iron", as catalogs of version 1 and 2 keep a set of nutrients.
[[nodiscard]] std::set<core::Nutrient> nutrients_of_text(std::string_view text);

} // namespace catalog
