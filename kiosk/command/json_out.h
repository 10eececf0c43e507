// The documented JSON form of a comparison (docs/json.md). It is an interface: a change raises its version.
#pragma once

#include "core/compare/comparison.h"
#include "core/label/allergens.h"
#include "core/label/grains.h"
#include "core/label/sugars.h"
#include "core/product.h"
#include "core/rules/rule_sets.h"
#include "core/rules/unit_price.h"

#include <nlohmann/json_fwd.hpp>

#include <optional>
#include <span>
#include <vector>

namespace kiosk {

/// The version that `"version"` holds.
inline constexpr int json_version = 2;

/// Both products and one comparison a basis, as docs/json.md says.
[[nodiscard]] nlohmann::ordered_json comparison_json(const core::Product& left, const core::Product& right,
                                                     const std::vector<core::Comparison>& comparisons,
                                                     const std::optional<core::PricePair>& prices = std::nullopt,
                                                     std::span<const core::RuleSet> rules = {});

/// The names that JSON uses: "serving", "left_less", "too_close_to_tell" ...
[[nodiscard]] const char* json_name(core::Basis basis);
[[nodiscard]] const char* json_name(core::Finding finding);
[[nodiscard]] const char* json_name(core::Why why);
[[nodiscard]] const char* json_name(core::Source source);
[[nodiscard]] const char* json_name(core::Origin::Kind kind);
[[nodiscard]] const char* json_name(core::Reading reading);
[[nodiscard]] const char* json_name(core::Aim aim);
[[nodiscard]] const char* json_name(core::Audience audience);
[[nodiscard]] const char* json_name(core::SecondColumn::Kind kind);
[[nodiscard]] const char* json_name(core::PriceWhy why);
[[nodiscard]] const char* json_name(core::FirstGrain::Kind kind);
[[nodiscard]] const char* json_name(core::SugarRow::Kind kind); ///< of sugars that a list names
[[nodiscard]] const char* json_name(core::Allergen allergen);
[[nodiscard]] const char* json_name(core::AllergenPlace place);
[[nodiscard]] const char* json_name(core::Verdict verdict);
[[nodiscard]] const char* json_name(core::Reason reason);
[[nodiscard]] const char* json_name(core::Bound bound);
[[nodiscard]] const char* json_name(core::Counted counted);
[[nodiscard]] const char* json_name(core::Per per);
[[nodiscard]] const char* json_name(core::JudgedBy judged_by);
[[nodiscard]] const char* json_name(core::Beyond beyond);

/// What both labels say to the chosen published rules (`rules` in docs/json.md).
[[nodiscard]] nlohmann::ordered_json rules_json(const core::Product& left, const core::Product& right,
                                                std::span<const core::RuleSet> chosen);

/// The prices of a comparison (`prices` in docs/json.md).
[[nodiscard]] nlohmann::ordered_json prices_json(const core::PricePair& prices);

/// The ingredients of a product (`left.ingredients` in docs/json.md).
[[nodiscard]] nlohmann::ordered_json ingredients_json(const core::Product& product);

/// The allergens that its label names (`left.allergens` in docs/json.md).
[[nodiscard]] nlohmann::ordered_json allergens_json(const core::Product& product);

} // namespace kiosk
