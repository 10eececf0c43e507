#include "core/rules/rule_sets.h"

#include "core/rules/answer.h"
#include "core/rules/claims.h"
#include "core/rules/programs.h"

#include <algorithm>

namespace core {
namespace {

constexpr RuleSetInfo sets[] = {
    {RuleSet::CalorieClaims, "claims_calories"},
    {RuleSet::FatClaims, "claims_fat"},
    {RuleSet::SaturatedFatClaims, "claims_saturated_fat"},
    {RuleSet::CholesterolClaims, "claims_cholesterol"},
    {RuleSet::SodiumClaims, "claims_sodium"},
    {RuleSet::SugarClaims, "claims_sugars"},
    {RuleSet::LeanClaims, "claims_lean"},
    {RuleSet::SourceClaims, "claims_sources"},
    {RuleSet::DisclosureLevels, "claims_levels"},
    {RuleSet::Wic, "wic"},
    {RuleSet::WicBefore, "wic_before"},
    {RuleSet::Cacfp, "cacfp"},
    {RuleSet::CacfpBefore, "cacfp_before"},
};

std::string_view without_blanks(std::string_view text)
{
    text.remove_prefix(std::min(text.find_first_not_of(" \t"), text.size()));
    return text.substr(0, text.find_last_not_of(" \t") + 1);
}

bool is_printed(const Label& label, Nutrient nutrient)
{
    const Line* line = label.per_serving.find(nutrient);
    return line && (line->amount || line->percent);
}

} // namespace

std::span<const RuleSetInfo> rule_sets()
{
    return sets;
}

std::optional<RuleSet> rule_set_by_key(std::string_view key)
{
    const auto found = std::ranges::find(sets, key, &RuleSetInfo::key);
    if (found == std::end(sets))
        return std::nullopt;
    return found->set;
}

std::string rule_set_keys()
{
    std::string keys;
    for (const auto& info : sets)
        keys.append(keys.empty() ? "" : ", ").append(info.key);
    return keys;
}

std::optional<std::vector<RuleSet>> rule_sets_named(std::string_view list)
{
    std::vector<RuleSet> named;
    bool more = !without_blanks(list).empty();
    while (more) {
        const auto comma = std::min(list.find(','), list.size());
        const auto set = rule_set_by_key(without_blanks(list.substr(0, comma)));
        if (!set || std::ranges::find(named, *set) != named.end())
            return std::nullopt;
        named.push_back(*set);
        more = comma < list.size();
        list.remove_prefix(comma + (more ? 1 : 0));
    }
    std::ranges::sort(named, {}, [](RuleSet set) { return std::ranges::find(sets, set, &RuleSetInfo::set); });
    return named;
}

std::vector<const Rule*> rules_of(RuleSet set)
{
    std::vector<const Rule*> rules;
    for (const auto rows : {claim_rules(), program_rules()})
        for (const auto& rule : rows)
            if (rule.set == set)
                rules.push_back(&rule);
    return rules;
}

const Rule* rule_by_key(std::string_view key, std::optional<Nutrient> subject)
{
    for (const auto rows : {claim_rules(), program_rules()})
        for (const auto& rule : rows)
            if (rule.key == key && rule.subject == subject)
                return &rule;
    return nullptr;
}

std::vector<Answer> answers_to(std::span<const RuleSet> chosen, const Label& label, const ReferenceAmount* food)
{
    std::vector<Answer> answers;
    for (const auto& info : sets) {
        if (std::ranges::find(chosen, info.set) == chosen.end())
            continue;
        for (const Rule* rule : rules_of(info.set))
            if (!rule->subject || is_printed(label, *rule->subject))
                if (auto answer = answer_to(*rule, label, food); answer.verdict != Verdict::NotForThisFood)
                    answers.push_back(std::move(answer));
    }
    return answers;
}

} // namespace core
