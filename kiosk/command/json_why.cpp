#include "kiosk/command/json_why.h"

#include "core/figure/figure.h"

#include <nlohmann/json.hpp>

namespace kiosk {

using Json = nlohmann::ordered_json;
using Kind = core::Step::Kind;

const char* json_name(Kind kind)
{
    switch (kind) {
    case Kind::Printed:
        return "printed";
    case Kind::NotPrinted:
        return "not_printed";
    case Kind::NotSignificant:
        return "not_significant";
    case Kind::AmountStandsFor:
        return "amount_stands_for";
    case Kind::PercentStandsFor:
        return "percent_stands_for";
    case Kind::PercentOfAmount:
        return "percent_of_amount";
    case Kind::Together:
        return "together";
    case Kind::NoMoreThanWhole:
        return "no_more_than_whole";
    case Kind::NoLessThanPart:
        return "no_less_than_part";
    case Kind::Contradicts:
        return "contradicts";
    case Kind::ServingStandsFor:
        return "serving_stands_for";
    case Kind::ServingsStandFor:
        return "servings_stand_for";
    case Kind::Times:
        return "times";
    case Kind::PercentTimes:
        return "percent_times";
    case Kind::PercentFromAmount:
        return "percent_from_amount";
    case Kind::OnBasis:
        return "on_basis";
    case Kind::PercentOnBasis:
        break;
    }
    return "percent_on_basis";
}

const char* json_name(core::Contradiction contradiction)
{
    switch (contradiction) {
    case core::Contradiction::OffTheRule:
        return "off_the_rule";
    case core::Contradiction::AmountAgainstPercent:
        return "amount_against_percent";
    case core::Contradiction::WorkedBack:
        return "worked_back";
    case core::Contradiction::PartAgainstWhole:
        break;
    }
    return "part_against_whole";
}

std::string exact_json(std::int64_t nano, std::int64_t unit)
{
    const std::int64_t times = 1'000'000'000 / unit;
    std::string text = core::decimal_text(nano * times, 9);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.'))
        text.pop_back();
    return text;
}

namespace {

constexpr std::int64_t one = 1'000'000'000;

void add_range(Json& json, const core::Step& step, core::Nutrient nutrient)
{
    const auto unit = core::nano_of(core::info(nutrient).unit);
    if (step.range)
        json["range"] = {{"low", exact_json(step.range->low.nano(), unit)},
                         {"below", exact_json(step.range->high.nano(), unit)}};
    if (step.percents)
        json["range"] = {{"low", exact_json(step.percents->low.nano(), one)},
                         {"below", exact_json(step.percents->high.nano(), one)}};
    if (step.span)
        json["range"] = {{"low", exact_json(step.span->low, one)}, {"up_to", exact_json(step.span->high, one)}};
}

Json step_json(const core::Step& step, core::Nutrient nutrient)
{
    const auto unit = core::info(nutrient).unit;
    Json json{{"step", json_name(step.kind)}};
    if (!step.citation.empty())
        json["rule"] = step.citation;
    add_range(json, step, nutrient);
    if (step.daily)
        json["of_daily_value"] = exact_json(step.daily->nano(), core::nano_of(unit));
    if (step.other)
        json["other"] = core::info(*step.other).key;
    if (step.contradiction)
        json["contradiction"] = json_name(*step.contradiction);
    if (step.span)
        json["narrowed_by_net_quantity"] = step.narrowed;
    if (step.times)
        json["times"] = std::to_string(step.times->over) + "/" + std::to_string(step.times->under);
    if (step.figure)
        json["amount"] = core::number_of(*step.figure, unit);
    if (step.percent)
        json["percent"] = *step.percent;
    return json;
}

} // namespace

Json steps_json(const std::vector<core::Step>& steps, core::Nutrient nutrient)
{
    Json all = Json::array();
    for (const auto& step : steps)
        all.push_back(step_json(step, nutrient));
    return all;
}

} // namespace kiosk
