// The part of the JSON form that tells what labels say to published rules.
#include "kiosk/command/json_out.h"
#include "kiosk/command/json_why.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstdio>
#include <string>

namespace kiosk {

using Json = nlohmann::ordered_json;

const char* json_name(core::Verdict verdict)
{
    switch (verdict) {
    case core::Verdict::Meets:
        return "meets";
    case core::Verdict::DoesNotMeet:
        return "does_not_meet";
    case core::Verdict::CannotTell:
        return "cannot_tell";
    case core::Verdict::NotForThisFood:
        break;
    }
    return "not_for_this_food";
}

const char* json_name(core::Reason reason)
{
    switch (reason) {
    case core::Reason::Figures:
        return "figures";
    case core::Reason::RangeStraddles:
        return "range_straddles";
    case core::Reason::OunceDecides:
        return "ounce_decides";
    case core::Reason::NoReferenceAmount:
        return "no_reference_amount";
    case core::Reason::ReferenceAmountInWords:
        return "reference_amount_in_words";
    case core::Reason::NoServingSize:
        return "no_serving_size";
    case core::Reason::UnlikeMeasures:
        return "unlike_measures";
    case core::Reason::FigureNotPrinted:
        return "figure_not_printed";
    case core::Reason::FigureOffTheRule:
        return "figure_off_the_rule";
    case core::Reason::FigureWorkedBack:
        return "figure_worked_back";
    case core::Reason::MayBeMainDish:
        return "may_be_main_dish";
    case core::Reason::NeedsReferenceFood:
        return "needs_reference_food";
    case core::Reason::NeedsPackageWords:
        return "needs_package_words";
    case core::Reason::LimitNotConfirmed:
        return "limit_not_confirmed";
    case core::Reason::OtherFood:
        return "other_food";
    case core::Reason::ForYoungChildren:
        break;
    }
    return "for_young_children";
}

const char* json_name(core::Bound bound)
{
    switch (bound) {
    case core::Bound::Below:
        return "below";
    case core::Bound::AtMost:
        return "at_most";
    case core::Bound::AtLeast:
        break;
    }
    return "at_least";
}

const char* json_name(core::Counted counted)
{
    switch (counted) {
    case core::Counted::Amount:
        return "amount";
    case core::Counted::PercentDailyValue:
        return "percent_daily_value";
    case core::Counted::PercentOfCalories:
        break;
    }
    return "percent_of_calories";
}

const char* json_name(core::Per per)
{
    switch (per) {
    case core::Per::ReferenceAmount:
        return "reference_amount";
    case core::Per::Serving:
        return "serving";
    case core::Per::Portion:
        break;
    }
    return "portion";
}

const char* json_name(core::JudgedBy judged_by)
{
    return judged_by == core::JudgedBy::TrueContent ? "true_content" : "printed_figure";
}

const char* json_name(core::Beyond beyond)
{
    switch (beyond) {
    case core::Beyond::Nothing:
        return "nothing";
    case core::Beyond::Ingredients:
        return "ingredients";
    case core::Beyond::ReferenceFood:
        return "reference_food";
    case core::Beyond::PackageWords:
        break;
    }
    return "package_words";
}

namespace {

Json day_json(const std::optional<core::Day>& day)
{
    if (!day)
        return nullptr;
    char text[16];
    std::snprintf(text, sizeof text, "%04d-%02d-%02d", day->year, day->month, day->day);
    return text;
}

std::string set_key(core::RuleSet set)
{
    const auto all = core::rule_sets();
    return std::string(std::ranges::find(all, set, &core::RuleSetInfo::set)->key);
}

/// An amount of the limit's nutrient in its own unit.
std::string content_json(core::Content content, core::Nutrient nutrient)
{
    return exact_json(content.nano(), core::nano_of(core::info(nutrient).unit));
}

Json range_json(core::Range<core::Content> range, core::Nutrient nutrient)
{
    return {{"low", content_json(range.low, nutrient)}, {"below", content_json(range.high, nutrient)}};
}

std::string unit_json(core::Nutrient nutrient)
{
    const auto unit = core::info(nutrient).unit;
    return unit == core::Unit::Kilocalorie ? std::string("kcal") : std::string(core::unit_name(unit));
}

Json limit_json(const core::Limit& limit)
{
    Json json{{"nutrient", core::info(limit.nutrient).key},
              {"bound", json_name(limit.bound)},
              {"counted", json_name(limit.counted)},
              {"confirmed", limit.confirmed}};
    if (limit.confirmed) { // a limit that was not read in the rule is not passed on as if it had been
        json["value"] = limit.counted == core::Counted::Amount
                            ? content_json(core::Content::from_nano(limit.value), limit.nutrient)
                            : std::to_string(limit.value);
        json["unit"] = limit.counted == core::Counted::Amount ? unit_json(limit.nutrient) : "%";
    }
    json["per"] = json_name(limit.per);
    if (limit.per == core::Per::Portion)
        json["portion"] = {{"least", core::measure_text(limit.portion.least)},
                           {"most", core::measure_text(limit.portion.most)}};
    return json;
}

Json decided_json(const core::Decided& decided)
{
    const auto nutrient = decided.limit.nutrient;
    Json json{{"limit", limit_json(decided.limit)}, {"unit", unit_json(nutrient)}};
    if (decided.figure) {
        json["printed"] = core::number_of(*decided.figure, core::info(nutrient).unit);
        json["less_than"] = decided.figure->less_than;
    }
    if (decided.behind)
        json["behind"] = range_json(*decided.behind, nutrient);
    if (decided.serving)
        json["serving"] = core::measure_text(*decided.serving);
    if (decided.amount)
        json["amount"] = core::measure_text(*decided.amount);
    if (decided.worked_out)
        json["worked_out"] = content_json(*decided.worked_out, nutrient);
    if (decided.reaches)
        json["reaches"] = range_json(*decided.reaches, nutrient);
    return json;
}

Json answer_json(const core::Answer& answer)
{
    const auto& rule = *answer.rule;
    Json json{{"set", set_key(rule.set)}, {"rule", rule.key}};
    if (rule.subject)
        json["subject"] = core::info(*rule.subject).key;
    json["citation"] = rule.citation;
    json["from"] = day_json(rule.from);
    json["to"] = day_json(rule.to);
    json["end_confirmed"] = rule.end_confirmed;
    json["judged_by"] = json_name(rule.judged_by);
    json["beyond"] = json_name(rule.beyond);
    json["verdict"] = json_name(answer.verdict);
    json["reason"] = json_name(answer.reason);
    json["true_content_agrees"] = answer.true_content_agrees;
    json["state_decides"] = rule.set == core::RuleSet::Wic || rule.set == core::RuleSet::WicBefore;
    if (answer.decided)
        json["decided"] = decided_json(*answer.decided);
    return json;
}

Json side_json(const core::Product& product, std::span<const core::RuleSet> chosen)
{
    Json json = Json::array();
    for (const auto& answer : core::answers_to(chosen, product.label, product.reference_food))
        json.push_back(answer_json(answer));
    return json;
}

} // namespace

Json rules_json(const core::Product& left, const core::Product& right, std::span<const core::RuleSet> chosen)
{
    Json json{{"sets", Json::array()}};
    for (const auto set : chosen)
        json["sets"].push_back(set_key(set));
    json["left"] = side_json(left, chosen);
    json["right"] = side_json(right, chosen);
    return json;
}

} // namespace kiosk
