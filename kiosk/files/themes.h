// The themes by the names that the command line uses.
#pragma once

#include "ui/look/theme.h"

#include <string_view>

namespace kiosk {

/// The theme called "paper", "night" or "plain"; paper for any other name.
[[nodiscard]] ui::ThemeName theme_named(std::string_view name);

} // namespace kiosk
