// What a shopper's screen tells in words, on all of its pages: for looking up the words that need an explanation.
#pragma once

#include "ui/state.h"
#include "ui/words/language.h"

#include <string>
#include <vector>

namespace ui {

/// The texts of that screen, in no order that means something; nothing for one that tells nothing of labels.
[[nodiscard]] std::vector<std::string> shown_texts(const State& state, ScreenId screen, const Language& language);

/// The words of that screen that need an explanation; of a screen without any, all that there are.
[[nodiscard]] std::vector<Meaning> meanings_for(const State& state, ScreenId screen, const Language& language);

} // namespace ui
