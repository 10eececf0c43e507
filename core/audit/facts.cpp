#include "core/audit/facts.h"

#include "core/figure/daily_values_table.h"
#include "core/figure/percent.h"
#include "core/figure/rounding.h"
#include "core/label/content_behind.h"

#include <algorithm>

namespace core::audited {
namespace {

constexpr std::size_t panels = 2;
constexpr std::size_t audiences = 3;
using DailyValues = std::array<std::array<std::array<std::int64_t, nutrient_count>, audiences>, panels>;

DailyValues laid_flat()
{
    DailyValues all{};
    for (const auto& row : daily_value_rows())
        all[static_cast<std::size_t>(row.panel)][static_cast<std::size_t>(row.audience)]
           [static_cast<std::size_t>(row.nutrient)] = row.nano;
    return all;
}

/// The ranges behind the commonest percents, worked out once: most lines of all labels print one of these.
class CommonPercents {
public:
    CommonPercents()
    {
        for (int percent = 0; percent < count; ++percent) {
            whole_[static_cast<std::size_t>(percent)] = range_behind(PercentRounding::Whole, {percent, false});
            vitamin_[static_cast<std::size_t>(percent)] = range_behind(PercentRounding::Vitamin, {percent, false});
        }
    }
    [[nodiscard]] std::optional<Range<Percent>> find(PercentRounding rounding, const PrintedPercent& printed) const
    {
        if (printed.less_than || printed.percent < 0 || printed.percent >= count)
            return range_behind(rounding, printed);
        return (rounding == PercentRounding::Whole ? whole_ : vitamin_)[static_cast<std::size_t>(printed.percent)];
    }

private:
    static constexpr int count = 128;
    std::array<std::optional<Range<Percent>>, count> whole_;
    std::array<std::optional<Range<Percent>>, count> vitamin_;
};

std::optional<Range<Percent>> percents_behind(PercentRounding rounding, const PrintedPercent& printed)
{
    static const CommonPercents common;
    return common.find(rounding, printed);
}

constexpr std::int64_t hundred_percent = 100'000'000'000;

/// Whether an amount reaches into what a percent stands for; edges that touch are a half that went the other way.
bool meets(Reach amount, Range<Percent> percents, std::int64_t daily)
{
    return Wide{amount.low} * hundred_percent <= Wide{percents.high.nano()} * daily &&
           Wide{percents.low.nano()} * daily <= Wide{amount.high} * hundred_percent;
}

/// The quality of a protein lowers its percent and never raises it (21 CFR 101.9(c)(7)(ii)).
bool protein_fits(Reach amount, Range<Percent> percents, std::int64_t daily)
{
    return Wide{percents.low.nano()} * daily <= Wide{amount.high} * hundred_percent;
}

/// What a line stands for by its amount. A figure off the rule stands for itself, a worked back one for what is near.
Reach reach_of(Nutrient nutrient, const Line& line, Panel panel, bool& on_grid)
{
    if (const auto range = range_behind(nutrient, *line.amount, panel))
        return {range->low.nano(), range->high.nano()};
    on_grid = false;
    const std::int64_t nano = line.amount->amount.nano();
    if (line.amount->less_than)
        return {0, nano};
    return line.worked_back ? Reach{nano - nano / 20, nano + nano / 20} : Reach{nano, nano};
}

void read_percent(Facts& facts, Nutrient nutrient, const Line& line)
{
    const auto& label = facts.product.label;
    const auto rounding = percent_rounding(nutrient, label.panel);
    if (rounding == PercentRounding::None)
        return;
    const auto percents = percents_behind(rounding, *line.percent);
    if (!percents) {
        facts.percent_off |= bit(nutrient);
        return;
    }
    const std::int64_t daily = daily_nano(nutrient, label.panel, label.audience);
    if (!line.amount || daily == 0)
        return;
    const Reach reach = facts.of(nutrient);
    if (nutrient == Nutrient::Protein ? protein_fits(reach, *percents, daily) : meets(reach, *percents, daily))
        ++facts.agreeing;
    else if (!percent_fits(nutrient, line, label.panel, label.audience))
        facts.contradicted |= bit(nutrient);
}

void read_serving(Facts& facts)
{
    const auto& metric = facts.product.label.serving.metric;
    if (!metric)
        return;
    facts.volume = std::holds_alternative<Volume>(*metric);
    std::visit(
        [&facts](auto printed) {
            if (printed.nano() <= 0)
                return;
            const auto range = range_behind_serving_size(printed);
            facts.serving = {range.low.nano(), range.high.nano()};
            facts.has_serving = true;
        },
        *metric);
}

} // namespace

std::int64_t daily_nano(Nutrient nutrient, Panel panel, Audience audience)
{
    static const DailyValues all = laid_flat();
    return all[static_cast<std::size_t>(panel)][static_cast<std::size_t>(audience)][static_cast<std::size_t>(nutrient)];
}

bool percent_fits(Nutrient nutrient, const Line& line, Panel panel, Audience audience)
{
    const std::int64_t daily = daily_nano(nutrient, panel, audience);
    const auto rounding = percent_rounding(nutrient, panel);
    if (!line.amount || !line.percent || daily == 0 || rounding == PercentRounding::None)
        return true;
    Label alone; // what else stands there is not asked
    alone.panel = panel;
    alone.audience = audience;
    alone.per_serving.lines.emplace(nutrient, line);
    const auto percents = range_behind(rounding, *line.percent);
    if (!percents)
        return false;
    Reach reach{line.amount->amount.nano(), line.amount->amount.nano()};
    if (const auto behind = content_behind(alone, alone.per_serving, nutrient, std::nullopt))
        reach = {behind->low.nano(), behind->high.nano()};
    if (nutrient == Nutrient::Protein)
        return protein_fits(reach, *percents, daily);
    return meets(reach, *percents, daily) || counted_from_amount(alone, nutrient, line);
}

Facts facts_of(const Product& product)
{
    Facts facts{.product = product, .reach = {}, .line = {}};
    const auto& label = product.label;
    for (const auto& [nutrient, line] : label.per_serving.lines) {
        const auto place = static_cast<std::size_t>(nutrient);
        facts.line[place] = &line;
        if (line.amount) {
            bool on_grid = true;
            facts.reach[place] = reach_of(nutrient, line, label.panel, on_grid);
            facts.amounts |= bit(nutrient);
            facts.known |= bit(nutrient);
            if (!on_grid && !line.worked_back)
                facts.off_grid |= bit(nutrient);
        }
        if (line.percent)
            read_percent(facts, nutrient, line);
    }
    for (const Nutrient nutrient : label.per_serving.not_significant) {
        const auto range = range_behind_not_significant(nutrient, label.panel);
        facts.reach[static_cast<std::size_t>(nutrient)] = {range.low.nano(), range.high.nano()};
        facts.known |= bit(nutrient);
    }
    read_serving(facts);
    return facts;
}

} // namespace core::audited
