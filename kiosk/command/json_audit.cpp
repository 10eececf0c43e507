#include "kiosk/command/json_audit.h"

#include "kiosk/desk/audit_words.h"

#include <nlohmann/json.hpp>

namespace kiosk {
namespace {

using Json = nlohmann::ordered_json;

Json figure_json(const core::Figure& figure, core::Nutrient nutrient)
{
    return {{"amount", core::number_of(figure, core::info(nutrient).unit)}, {"less_than", figure.less_than}};
}

Json sample_json(const catalog::DoubtSample& sample, const ui::Language& language)
{
    const core::Doubt& doubt = sample.doubt;
    Json made{{"gtin", sample.gtin.digits()},
              {"name", sample.name},
              {"brand", sample.brand},
              {"source", sample.source},
              {"row", sample.row}};
    if (doubt.nutrient)
        made["nutrient"] = core::info(*doubt.nutrient).key;
    if (doubt.column)
        made["column"] = *doubt.column == core::SecondColumn::Kind::PerContainer ? "per_container" : "as_prepared";
    if (doubt.other)
        made["whole"] = core::info(*doubt.other).key;
    if (doubt.nutrient && doubt.found)
        made["found"] = figure_json(*doubt.found, *doubt.nutrient);
    if (doubt.percent)
        made["daily_value"] = {{"percent", doubt.percent->percent}, {"less_than", doubt.percent->less_than}};
    if (doubt.nutrient && doubt.likely && doubt.rule != core::DoubtRule::PartOverWhole)
        made["likely"] = figure_json(*doubt.likely, *doubt.nutrient);
    if (!sample.others.empty())
        made["other_gtin"] = sample.others.front().digits();
    made["sentence"] = sample_sentence(sample, language);
    return made;
}

} // namespace

Json audit_json(const catalog::AuditTally& tally, const ui::Language& language)
{
    Json rules = Json::array();
    for (const auto& rule : core::doubt_rules()) {
        const auto& found = tally.of(rule.rule);
        if (found.count == 0)
            continue;
        Json samples = Json::array();
        for (const auto& sample : found.samples)
            samples.push_back(sample_json(sample, language));
        rules.push_back({{"rule", rule.name},
                         {"severity", core::severity_name(rule.severity)},
                         {"citation", rule.citation},
                         {"count", found.count},
                         {"samples", std::move(samples)}});
    }
    return {{"form", "pairstand audit"},  {"version", audit_json_version}, {"labels", tally.labels()},
            {"doubted", tally.doubted()}, {"approved", tally.approved()},  {"rules", std::move(rules)}};
}

} // namespace kiosk
