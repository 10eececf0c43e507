// The major allergens that an ingredient list and a Contains statement name, as far as the demo catalog's words go.
// Sources: FD&C Act 201(qq) and 403(w), 21 U.S.C. 321(qq) and 343(w); FASTER Act of 2021 (sesame). Only for tests: an
// own reading beside that of core/label/allergens, with which it shares no words.
#pragma once

#include <set>
#include <string>
#include <string_view>

namespace test::demo {

/// The food sources ("milk", "almonds" ...) of the words in an ingredient list. Highly refined oils do not count.
[[nodiscard]] std::set<std::string> allergens_of_ingredients(std::string_view ingredients);

/// The food sources that the statement names; none for an empty one. What is no allergen stands there as it is written.
[[nodiscard]] std::set<std::string> allergens_of_statement(std::string_view statement);

} // namespace test::demo
