#include "kiosk/desk/audit_words.h"

#include "ui/words/core_words.h"
#include "ui/words/doubt_words.h"
#include "ui/words/numbers.h"

namespace kiosk {
namespace {

using ui::TextId;
using Kind = ReportLine::Kind;

void add_rule(const core::DoubtRuleInfo& rule, const catalog::DoubtCount& found, const ui::Language& language,
              std::vector<ReportLine>& lines)
{
    lines.push_back(
        {Kind::Count, language.fill(TextId::audit_rule, {{"rule", rule.name},
                                                         {"n", ui::grouped(std::to_string(found.count))},
                                                         {"severity", ui::severity_words(rule.severity, language)},
                                                         {"source", ui::core_words(rule.citation, language)}})});
    for (const auto& sample : found.samples)
        lines.push_back(
            {Kind::Sample, sample.gtin.digits() + " " + sample.name + ": " + sample_sentence(sample, language)});
    if (found.count > found.samples.size())
        lines.push_back(
            {Kind::Sample, language.fill(TextId::audit_more,
                                         {{"n", ui::grouped(std::to_string(found.count - found.samples.size()))}})});
}

} // namespace

std::string sample_sentence(const catalog::DoubtSample& sample, const ui::Language& language)
{
    return ui::doubt_sentence(sample.doubt, language, sample.others.empty() ? "" : sample.others.front().digits());
}

std::vector<ReportLine> audit_words(const catalog::AuditTally& tally, const ui::Language& language)
{
    std::vector<ReportLine> lines;
    const std::string labels = ui::grouped(std::to_string(tally.labels()));
    if (tally.approved() > 0)
        lines.push_back({Kind::Sentence,
                         language.fill(TextId::audit_hidden, {{"n", ui::grouped(std::to_string(tally.approved()))}})});
    if (tally.doubted() == 0) {
        lines.push_back({Kind::Sentence, language.fill(TextId::audit_none, {{"n", labels}})});
        return lines;
    }
    lines.push_back(
        {Kind::Sentence, language.fill(TextId::audit_some,
                                       {{"n", labels}, {"doubted", ui::grouped(std::to_string(tally.doubted()))}})});
    for (const auto& rule : core::doubt_rules())
        if (const auto& found = tally.of(rule.rule); found.count > 0)
            add_rule(rule, found, language, lines);
    return lines;
}

} // namespace kiosk
