// The documented JSON form of a comparison (docs/json.md). It is an interface: a change raises its version.
#pragma once

#include "core/compare/comparison.h"
#include "core/product.h"
#include "core/rules/unit_price.h"

#include <nlohmann/json_fwd.hpp>

#include <optional>
#include <vector>

namespace kiosk {

/// The version that `"version"` holds.
inline constexpr int json_version = 2;

/// Both products and one comparison a basis, as docs/json.md says.
[[nodiscard]] nlohmann::ordered_json comparison_json(const core::Product& left, const core::Product& right,
                                                     const std::vector<core::Comparison>& comparisons,
                                                     const std::optional<core::PricePair>& prices = std::nullopt);

/// The names that JSON uses: "serving", "left_less", "too_close_to_tell" ...
[[nodiscard]] const char* json_name(core::Basis basis);
[[nodiscard]] const char* json_name(core::Finding finding);
[[nodiscard]] const char* json_name(core::Why why);
[[nodiscard]] const char* json_name(core::Source source);
[[nodiscard]] const char* json_name(core::Reading reading);
[[nodiscard]] const char* json_name(core::Aim aim);
[[nodiscard]] const char* json_name(core::Audience audience);
[[nodiscard]] const char* json_name(core::SecondColumn::Kind kind);
[[nodiscard]] const char* json_name(core::PriceWhy why);

/// The prices of a comparison (`prices` in docs/json.md).
[[nodiscard]] nlohmann::ordered_json prices_json(const core::PricePair& prices);

} // namespace kiosk
