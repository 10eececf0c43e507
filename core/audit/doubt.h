// What the audit says of one label: a rule by its stable name, and the figures that led to it. Values without words.
#pragma once

#include "core/figure/figure.h"
#include "core/label/format.h"
#include "core/label/label.h"
#include "core/label/nutrient.h"
#include "core/label/serving.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace core {

/// What the audit asks. The rows with names and citations: core/audit/doubt_table.cpp.
enum class DoubtRule : std::uint8_t {
    SlippedByTen, ///< ten times, or a tenth of, what the rest of the label asks for
    UnitSwapped,  ///< grams for milligrams, milligrams for micrograms, IU for either
    Kilojoules,   ///< energy in kilojoules where calories stand
    PercentAgainstAmount,
    OtherPanel,         ///< the percents fit the Daily Values of the other panel
    OtherAudience,      ///< the percents fit the Daily Values of another age
    OffTheGrid,         ///< a figure that the rounding rule never prints
    PerHundred,         ///< the figures are those of 100 g or mL, not of the serving
    PartOverWhole,      ///< one part above its whole
    PartsOverWhole,     ///< parts that together come to more than their whole
    HeavierThanServing, ///< fat, carbohydrate and protein weigh more than the serving
    Calories,           ///< calories that the published factors do not allow
    ServingsAgainstNet, ///< servings times serving size do not come to the net quantity
    FarFromReference,   ///< a serving far from the amount customarily eaten of its food
    AudienceOfFood,     ///< food for young children with a label for adults
    DuplicateName,      ///< the same name and brand under several numbers (catalog/load/duplicates.h)
};
inline constexpr std::size_t doubt_rule_count = static_cast<std::size_t>(DoubtRule::DuplicateName) + 1;

/// How sure a doubt is. Never a verdict on the food.
enum class Severity : std::uint8_t {
    Wrong,   ///< no lawful label prints this
    Likely,  ///< most likely a slip of whoever wrote it down
    Unusual, ///< may well be right: worth a look at the package
};

/// What is fixed for one rule.
struct DoubtRuleInfo {
    DoubtRule rule;
    std::string_view name; ///< "slipped_by_ten": stable; for approvals, JSON and docs
    Severity severity;
    std::string_view citation; ///< the published source; "common practice" where none is
};

/// All rules, in order.
[[nodiscard]] std::span<const DoubtRuleInfo> doubt_rules();

/// What is fixed for this rule.
[[nodiscard]] const DoubtRuleInfo& info(DoubtRule rule);

/// The rule with this name; nothing for an unknown one.
[[nodiscard]] std::optional<DoubtRule> doubt_rule_named(std::string_view name);

/// "wrong", "likely", "unusual".
[[nodiscard]] std::string_view severity_name(Severity severity);

/// One doubt. Which members are set follows from the rule; ui/words/doubt_words makes a sentence of every one.
struct Doubt {
    DoubtRule rule;
    std::optional<Nutrient> nutrient = {};      ///< the line in doubt; the part of PartOverWhole
    std::optional<Nutrient> other = {};         ///< the whole of a part
    std::optional<Figure> found = {};           ///< what stands there
    std::optional<PrintedPercent> percent = {}; ///< what stands beside it
    std::optional<Figure> likely = {};          ///< what would fit
    std::optional<int> right_percent = {};      ///< what the amount comes to
    std::optional<Content> least = {};          ///< what the rest of the label allows: calories, or grams
    std::optional<Content> most = {};
    std::optional<Measure> serving = {};
    std::optional<Measure> reference = {}; ///< the reference amount, or the net quantity
    std::optional<Count> servings = {};
    std::optional<Panel> panel = {};               ///< that the percents fit
    std::optional<Audience> audience = {};         ///< that the percents fit
    std::optional<SecondColumn::Kind> column = {}; ///< the second column it is about; nothing: the one per serving
    bool operator==(const Doubt&) const = default;
};

} // namespace core
