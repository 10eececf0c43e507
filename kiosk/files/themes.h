// The themes by the names that the command line and settings use.
#pragma once

#include "ui/look/theme.h"

#include <string_view>

namespace kiosk {

/// The theme called "paper", "night" or "plain"; null for any other name.
[[nodiscard]] const ui::Theme* theme_named(std::string_view name);

} // namespace kiosk
