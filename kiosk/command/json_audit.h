// The documented JSON form of an audit (docs/audit.md). It is an interface: a change raises its version.
#pragma once

#include "catalog/load/audit_tally.h"
#include "ui/words/language.h"

#include <nlohmann/json_fwd.hpp>

#include <string>

namespace kiosk {

/// The version that `"version"` holds.
inline constexpr int audit_json_version = 1;

/// Counts in full and the samples, as docs/audit.md says.
[[nodiscard]] nlohmann::ordered_json audit_json(const catalog::AuditTally& tally, const ui::Language& language);

} // namespace kiosk
