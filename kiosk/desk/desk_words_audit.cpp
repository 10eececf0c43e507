#include "kiosk/desk/audit_words.h"
#include "kiosk/desk/desk_words.h"
#include "ui/words/core_words.h"
#include "ui/words/doubt_words.h"
#include "ui/words/numbers.h"

#include <algorithm>

namespace kiosk {
namespace {

using core::DoubtRule;
using ui::DeskPage;
using ui::Language;
using ui::TextId;
using Kind = ui::DeskLine::Kind;

constexpr TextId rule_names[] = {TextId::rule_name_slipped_by_ten,       TextId::rule_name_unit_swapped,
                                 TextId::rule_name_kilojoules,           TextId::rule_name_percent_against_amount,
                                 TextId::rule_name_other_panel,          TextId::rule_name_other_audience,
                                 TextId::rule_name_off_the_grid,         TextId::rule_name_per_hundred,
                                 TextId::rule_name_part_over_whole,      TextId::rule_name_parts_over_whole,
                                 TextId::rule_name_heavier_than_serving, TextId::rule_name_calories,
                                 TextId::rule_name_servings_against_net, TextId::rule_name_far_from_reference,
                                 TextId::rule_name_audience_of_food,     TextId::rule_name_duplicate_name};
static_assert(std::size(rule_names) == core::doubt_rule_count);

const std::string& name_of(DoubtRule rule, const Language& language)
{
    return language.text(rule_names[static_cast<std::size_t>(rule)]);
}

std::string number(std::size_t count)
{
    return ui::grouped(std::to_string(count));
}

/// How many labels of a rule are still in doubt.
std::size_t open_doubts(const DeskState& state, DoubtRule rule)
{
    const auto approved = std::ranges::count(state.approved, rule,
                                             [](const std::pair<core::Gtin, DoubtRule>& one) { return one.second; });
    return state.audit->tally.of(rule).count - static_cast<std::size_t>(approved);
}

} // namespace

DeskPage audit_page(const DeskState& state, const Language& language)
{
    DeskPage page;
    page.title = language.text(TextId::desk_audit_title);
    if (!state.audit)
        return page;
    if (!state.audit->of_catalog && state.file)
        page.lead.push_back(state.file->path.filename().string());
    if (state.audit->of_catalog && state.in_front)
        page.lead.push_back(language.fill(TextId::desk_audit_of, {{"catalog", state.catalog}}));
    for (const auto& line : audit_words(state.audit->tally, language))
        if (line.kind == Kind::Sentence)
            page.lead.push_back(line.words);
    if (!state.approved.empty())
        page.lead.push_back(language.fill(TextId::desk_audit_approved, {{"n", number(state.approved.size())}}));
    if (state.audit->faults > 0)
        page.lead.push_back(language.fill(TextId::desk_audit_faults, {{"n", number(state.audit->faults)}}));
    const auto rules = rules_of(*state.audit);
    for (std::size_t i = 0; i < rules.size(); ++i)
        page.choices.push_back(
            {name_of(rules[i], language),
             language.fill(TextId::desk_rule_line,
                           {{"n", number(open_doubts(state, rules[i]))},
                            {"severity", ui::severity_words(core::info(rules[i]).severity, language)}}),
             ui::OpenRule{i}});
    return page;
}

DeskPage rule_page(const DeskState& state, const Language& language)
{
    DeskPage page;
    if (!state.audit || !state.rule)
        return page;
    const auto& rule = core::info(*state.rule);
    page.title = name_of(*state.rule, language);
    const auto samples = samples_of(state, *state.rule);
    const auto open = open_doubts(state, *state.rule);
    page.lead.push_back(
        open == samples.size()
            ? language.fill(TextId::desk_rule_all, {{"n", number(open)}})
            : language.fill(TextId::desk_rule_some, {{"n", number(open)}, {"shown", number(samples.size())}}));
    page.lead.push_back(std::string(rule.name) + "; " + ui::core_words(rule.citation, language));
    page.one_column = true;
    for (std::size_t i = 0; i < samples.size(); ++i)
        page.choices.push_back({samples[i].name, sample_sentence(samples[i], language), ui::OpenDoubt{i}});
    return page;
}

DeskPage doubt_page(const DeskState& state, const Language& language)
{
    DeskPage page;
    if (!state.audit || !state.rule || !state.doubt)
        return page;
    const auto& samples = state.audit->tally.of(*state.rule).samples;
    const auto found = std::ranges::find(samples, *state.doubt, &catalog::DoubtSample::gtin);
    if (found == samples.end())
        return page;
    page.title = found->name;
    if (!found->brand.empty())
        page.lead.push_back(found->brand);
    page.lead.push_back(
        language.fill(TextId::desk_doubt_code, {{"code", found->gtin.digits()}, {"source", found->source}}));
    page.lead.push_back(sample_sentence(*found, language));
    if (state.audit->of_catalog)
        page.buttons.push_back({TextId::desk_approve, ui::ApproveDoubt{}});
    page.lines.push_back({Kind::Sentence, language.text(state.audit->of_catalog ? TextId::desk_approve_note
                                                                                : TextId::desk_approve_load)});
    return page;
}

} // namespace kiosk
