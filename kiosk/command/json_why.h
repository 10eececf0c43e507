// The steps behind a figure in the documented JSON form (docs/json.md).
#pragma once

#include "core/compare/why.h"

#include <nlohmann/json_fwd.hpp>

namespace kiosk {

/// The name of a step, as documented.
[[nodiscard]] const char* json_name(core::Step::Kind kind);
/// The name of a contradiction, as documented.
[[nodiscard]] const char* json_name(core::Contradiction contradiction);

/// The steps of one side of a row: an array of objects, each with `step` and what belongs to it.
[[nodiscard]] nlohmann::ordered_json steps_json(const std::vector<core::Step>& steps, core::Nutrient nutrient);

/// An exact decimal of billionths as text, in units of `unit` billionths: "0.0525".
[[nodiscard]] std::string exact_json(std::int64_t nano, std::int64_t unit);

} // namespace kiosk
