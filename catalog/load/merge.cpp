#include "catalog/load/merge.h"

namespace catalog {
namespace {

std::string percent_text(const core::PrintedPercent& percent)
{
    return (percent.less_than ? "less than " : "") + std::to_string(percent.percent) + "%";
}

} // namespace

std::vector<LabelDifference> differences(const core::Label& first, const core::Label& second)
{
    std::vector<LabelDifference> found;
    if (first.serving.metric && second.serving.metric && *first.serving.metric != *second.serving.metric)
        found.push_back(
            {"serving_size", core::measure_text(*first.serving.metric), core::measure_text(*second.serving.metric)});
    for (const auto& [nutrient, line] : first.per_serving.lines) {
        const auto* other = second.per_serving.find(nutrient);
        if (other == nullptr)
            continue;
        const std::string name(core::info(nutrient).key);
        if (line.amount && other->amount) {
            const auto here = core::as_printed(*line.amount, nutrient);
            const auto there = core::as_printed(*other->amount, nutrient);
            if (here != there)
                found.push_back({name, here, there});
        } else if (line.percent && other->percent && *line.percent != *other->percent)
            found.push_back({name, percent_text(*line.percent), percent_text(*other->percent)});
    }
    return found;
}

} // namespace catalog
