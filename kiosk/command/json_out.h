// The documented JSON form of a comparison (docs/json.md). It is an interface: a change raises its version.
#pragma once

#include "core/compare/comparison.h"
#include "core/product.h"

#include <nlohmann/json_fwd.hpp>

#include <vector>

namespace kiosk {

/// The version that `"version"` holds.
inline constexpr int json_version = 1;

/// Both products and one comparison a basis, as docs/json.md says.
[[nodiscard]] nlohmann::ordered_json comparison_json(const core::Product& left, const core::Product& right,
                                                     const std::vector<core::Comparison>& comparisons);

/// The names that JSON uses: "serving", "left_less", "too_close_to_tell" ...
[[nodiscard]] const char* json_name(core::Basis basis);
[[nodiscard]] const char* json_name(core::Finding finding);
[[nodiscard]] const char* json_name(core::Why why);
[[nodiscard]] const char* json_name(core::Source source);
[[nodiscard]] const char* json_name(core::Reading reading);
[[nodiscard]] const char* json_name(core::Aim aim);
[[nodiscard]] const char* json_name(core::Audience audience);
[[nodiscard]] const char* json_name(core::SecondColumn::Kind kind);

} // namespace kiosk
