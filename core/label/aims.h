// What people look for in a nutrient: less, more, or neither. Rows and sources: core/label/aims_table.cpp.
#pragma once

#include "core/label/nutrient.h"

namespace core {

/// Which way people are taught to look.
enum class Aim { Less, More, Neither };

/// The aim by the class list.
[[nodiscard]] Aim aim_of(Nutrient nutrient);

} // namespace core
