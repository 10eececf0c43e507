// Pages of the leader desk at their fullest: long names, many files, every kind of news.
#pragma once

#include "tests/ui/samples.h"

#include <vector>

namespace test {

/// Adds a state for every page of the desk, and Welcome with the way to it.
void add_desk_states(std::vector<NamedState>& states, const ui::Language& language);

} // namespace test
