// The rules of the audit, one a row; docs/audit.md shows the same rows to leaders.
#include "core/audit/doubt.h"

namespace core {
namespace {

using R = DoubtRule;
using S = Severity;

constexpr DoubtRuleInfo table[] = {
    {R::SlippedByTen, "slipped_by_ten", S::Likely, "21 CFR 101.9(d)(7)(ii), (c)(1)(i)"},
    {R::UnitSwapped, "unit_swapped", S::Likely, "21 CFR 101.9(c)(8)(iv)"},
    {R::Kilojoules, "kilojoules", S::Likely, "NIST SP 811, Appendix B"},
    {R::PercentAgainstAmount, "percent_against_amount", S::Wrong, "21 CFR 101.9(d)(7)(ii), (c)(8)(iii)"},
    {R::OtherPanel, "other_panel", S::Likely, "21 CFR 101.9(c)(8)(iv), (c)(9)"},
    {R::OtherAudience, "other_audience", S::Likely, "21 CFR 101.9(c)(8)(iv), (c)(9), (j)(5)"},
    {R::OffTheGrid, "off_the_grid", S::Wrong, "21 CFR 101.9(c)(1) to (c)(8)"},
    {R::PerHundred, "per_hundred", S::Likely, "21 CFR 101.9(b)"},
    {R::PartOverWhole, "part_over_whole", S::Wrong, "21 CFR 101.9(c)(2), (c)(6)"},
    {R::PartsOverWhole, "parts_over_whole", S::Wrong, "21 CFR 101.9(c)(2), (c)(6)"},
    {R::HeavierThanServing, "heavier_than_serving", S::Wrong, "21 CFR 101.9(b)(7)"},
    {R::Calories, "calories", S::Likely, "21 CFR 101.9(c)(1)(i), (g)(5)"},
    {R::ServingsAgainstNet, "servings_against_net", S::Likely, "21 CFR 101.9(b)(8), 101.7"},
    {R::FarFromReference, "far_from_reference", S::Unusual, "21 CFR 101.9(b)(2), 101.12(b)"},
    {R::AudienceOfFood, "audience_of_food", S::Unusual, "21 CFR 101.9(j)(5), 101.12(b)"},
    {R::DuplicateName, "duplicate_name", S::Unusual, "common practice"},
};
static_assert(std::size(table) == doubt_rule_count);

} // namespace

std::span<const DoubtRuleInfo> doubt_rules()
{
    return table;
}

const DoubtRuleInfo& info(DoubtRule rule)
{
    return table[static_cast<std::size_t>(rule)];
}

std::optional<DoubtRule> doubt_rule_named(std::string_view name)
{
    for (const auto& row : table)
        if (row.name == name)
            return row.rule;
    return std::nullopt;
}

std::string_view severity_name(Severity severity)
{
    switch (severity) {
    case Severity::Wrong:
        return "wrong";
    case Severity::Likely:
        return "likely";
    case Severity::Unusual:
        break;
    }
    return "unusual";
}

} // namespace core
