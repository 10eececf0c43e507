// What cannot be right on a label, in one sentence that names the figures.
#pragma once

#include "core/compare/comparison.h"
#include "ui/words/language.h"

#include <string>

namespace ui {

/// "Left: 3 g and 30% cannot both be right, so this line is not compared." `shown` must hold a contradiction.
[[nodiscard]] std::string contradiction_sentence(const core::Shown& shown, core::Nutrient nutrient,
                                                 const std::string& place, const Language& language);

} // namespace ui
