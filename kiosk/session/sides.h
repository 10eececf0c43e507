// Which side a new product takes: an empty one, else the older one that is not kept.
#pragma once

#include "ui/state.h"

#include <array>
#include <optional>

namespace kiosk {

using Sides = std::array<std::optional<ui::Held>, 2>;

/// Where this product already stands, so that the same package never fills both sides.
[[nodiscard]] std::optional<ui::Side> side_of(const Sides& sides, const core::Gtin& gtin);

/// The side that the next product takes; nothing when both are kept.
[[nodiscard]] std::optional<ui::Side> side_to_take(const Sides& sides);

} // namespace kiosk
