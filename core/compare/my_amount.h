// An amount that somebody means to eat, read from words: "2 servings", "1 1/2 cups", "5 pieces", "1/2 package".
#pragma once

#include "core/compare/basis.h"

#include <optional>
#include <string_view>

namespace core {

/// Reads an amount; nothing where the words do not begin with a sound number (is_sound) or name none of servings, cups,
/// tablespoons, pieces and package.
[[nodiscard]] std::optional<MyAmount> parse_my_amount(std::string_view text);

/// One step up or down on the screen: wholes of servings and pieces from 1 on, halves below and of the package,
/// quarters of cups. Stays where the next one would not be sound.
[[nodiscard]] MyAmount stepped(const MyAmount& amount, int by);

} // namespace core
