// What stands beside a figure to make it plain: sugars in teaspoons, and calories against a day's table.
#pragma once

#include "core/figure/figure.h"
#include "core/label/nutrient.h"
#include "ui/words/language.h"
#include "ui/words/pair_words.h"

#include <optional>
#include <string>

namespace ui {

/// "12 g of added sugars is about 3 teaspoons of sugar." for total and added sugars as they are shown; nothing for
/// other nutrients and for 0 g.
[[nodiscard]] std::optional<std::string> teaspoons_sentence(core::Nutrient nutrient, const core::Figure& shown,
                                                            const Language& language);

/// The estimated calories of a day as a table to look at, with its edition: one line an age group, for nobody in
/// particular.
[[nodiscard]] Section day_section(const Language& language);

} // namespace ui
