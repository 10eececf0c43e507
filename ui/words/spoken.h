// Written words as people say them: "8 g" is "8 grams", "1 1/2 cups" are "1 and a half cups", for the station's voice.
#pragma once

#include "ui/words/language.h"

#include <string>
#include <string_view>

namespace ui {

/// The words of a screen, to be spoken in this language: units and signs as words, large numbers without separators,
/// codes digit by digit, marks and arrows left out. Dates and decimals stay: a voice knows them. What is said comes
/// from the texts spoken_... of the language.
[[nodiscard]] std::string spoken(std::string_view words, const Language& language);

} // namespace ui
