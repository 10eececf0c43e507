// Amounts, percents and sizes as people read them, in the chosen language.
#pragma once

#include "core/figure/figure.h"
#include "core/figure/percent.h"
#include "core/label/serving.h"
#include "ui/words/language.h"

#include <string>
#include <string_view>

namespace ui {

/// Digits in groups of three: "1170" is "1,170". What stands behind a point stays.
[[nodiscard]] std::string grouped(std::string_view digits);

/// "0.5 g", "less than 1 g", "1,170 mg"; calories have no unit.
[[nodiscard]] std::string amount_words(const core::Figure& figure, core::Nutrient nutrient, const Language& language);

/// "8%", "less than 2%".
[[nodiscard]] std::string percent_words(int percent, bool less_than, const Language& language);

/// A percent to a tenth, rounded the way its end of a range needs: "20.5".
[[nodiscard]] std::string tenths_down(core::Percent percent);
[[nodiscard]] std::string tenths_up(core::Percent percent);

/// "9", "2.5".
[[nodiscard]] std::string count_words(core::Count count);

/// "1 cup (39 g)", or what there is of it.
[[nodiscard]] std::string serving_words(const core::Serving& serving, const Language& language);

/// "8%, between 5 and 20": never a bare word.
[[nodiscard]] std::string reading_sentence(core::Reading reading, std::string_view percent, const Language& language);

/// "low", "between 5 and 20", "high": for sentences that have said the percent already.
[[nodiscard]] const std::string& reading_word(core::Reading reading, const Language& language);

/// A name as it stands inside a sentence: "Vitamin D" turns into "vitamin D". Knows the capitals of Latin-1.
[[nodiscard]] std::string in_sentence(std::string_view name);

} // namespace ui
