// The published rules as a leader switches them on: all rows, their sets, and the answers of one label.
#pragma once

#include "core/label/label.h"
#include "core/rules/reference_amounts.h"
#include "core/rules/rule.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace core {

/// One set of rules.
struct RuleSetInfo {
    RuleSet set;
    std::string_view key; ///< "wic": what stands in the settings
};

/// All sets, in the order in which they are shown.
[[nodiscard]] std::span<const RuleSetInfo> rule_sets();

/// The set with this key.
[[nodiscard]] std::optional<RuleSet> rule_set_by_key(std::string_view key);

/// All keys with a comma between them, for messages: "claims_calories, claims_sugars, ...".
[[nodiscard]] std::string rule_set_keys();

/// "wic, cacfp" into its sets, in the order in which they are shown. Nothing for an unknown key, a key that stands
/// twice or a comma with nothing behind it; an empty list for an empty text.
[[nodiscard]] std::optional<std::vector<RuleSet>> rule_sets_named(std::string_view list);

/// The rows of one set, in the order of the rule.
[[nodiscard]] std::vector<const Rule*> rules_of(RuleSet set);

/// The row with this key ("low_sodium"; "high" with a subject); nullptr for an unknown one.
[[nodiscard]] const Rule* rule_by_key(std::string_view key, std::optional<Nutrient> subject = std::nullopt);

/// What a label says to every rule of the chosen sets. `food` is the row of its reference amount, or nullptr. For
/// "high" and "good source" there is an answer only for nutrients that the label prints. Rules for other foods are left
/// out.
[[nodiscard]] std::vector<Answer> answers_to(std::span<const RuleSet> chosen, const Label& label,
                                             const ReferenceAmount* food);

} // namespace core
