#include "core/figure/rounding.h"

#include "core/figure/daily_values.h"
#include "core/figure/rounding_table.h"

#include <algorithm>

namespace core {
namespace {

/// Billionths, half open; the untyped twin of Range, for rules that serve several dimensions.
struct Raw {
    std::int64_t low;
    std::int64_t high;
};

std::int64_t to_step(std::int64_t value, std::int64_t step)
{
    return (value + step / 2) / step * step;
}

/// The band that `value` falls into.
const Band& band_at(std::span<const Band> bands, std::int64_t value)
{
    const Band* found = &bands.front();
    for (const auto& band : bands)
        if (band.from <= value)
            found = &band;
    return *found;
}

/// What the bands alone allow behind `printed`: half a step to each side, with the step that holds on that side.
std::optional<Raw> behind_bands(std::span<const Band> bands, std::int64_t printed)
{
    if (printed < bands.front().from)
        return std::nullopt;
    const Band& above = band_at(bands, printed);
    const Band& below = printed > bands.front().from ? band_at(bands, printed - 1) : above;
    if (printed % above.step != 0 || printed % below.step != 0)
        return std::nullopt;
    return Raw{std::max(printed - below.step / 2, bands.front().from), printed + above.step / 2};
}

std::optional<Raw> behind_less_than(const RoundingRule& rule, std::int64_t printed)
{
    if (rule.less_than == 0 || printed != rule.less_than)
        return std::nullopt;
    return Raw{rule.less_than_from, rule.less_than + (rule.less_than_holds_its_end ? 1 : 0)};
}

std::optional<Raw> behind(const RoundingRule& rule, std::int64_t printed, bool less_than)
{
    if (printed < 0)
        return std::nullopt;
    if (less_than)
        return behind_less_than(rule, printed);
    auto range = behind_bands(rule.bands, printed);
    if (printed == 0 && rule.zero_below > 0) {
        const std::int64_t nearest = range ? range->high : 0;
        range = Raw{0, std::max(rule.zero_below, nearest)};
    }
    return range;
}

/// What may print as 0 or be left out of a vitamin or mineral: below 2 percent of the adult RDI, 21 CFR
/// 101.9(c)(8)(iii).
std::int64_t two_percent(Nutrient nutrient, Panel panel)
{
    auto rdi = daily_value(nutrient, panel, Audience::Adult);
    if (!rdi) // in IU before 2016
        rdi = daily_value(nutrient, Panel::Of2016, Audience::Adult);
    return rdi ? rdi->nano() / 50 : 0;
}

/// The widest place that can have made this figure: the guidance's or the Code's, else the finest digit that stands
/// there.
std::optional<Raw> behind_place(const VitaminPlace& place, std::int64_t printed, Panel panel)
{
    if (printed < 0)
        return std::nullopt;
    const std::int64_t widest = std::max(place.code_step, place.guidance_step);
    if (printed == 0)
        return Raw{0, std::max(two_percent(place.nutrient, panel), widest / 2)};
    for (std::int64_t step = widest; step >= 1; step /= 10)
        if (printed % step == 0)
            return Raw{std::max<std::int64_t>(printed - step / 2, 0), printed + std::max<std::int64_t>(step / 2, 1)};
    return std::nullopt;
}

template<class Quantity>
std::optional<Range<Quantity>> typed(std::optional<Raw> raw)
{
    if (!raw)
        return std::nullopt;
    return Range<Quantity>{Quantity::from_nano(raw->low), Quantity::from_nano(raw->high)};
}

/// The fewest digits behind the point that print this many of a unit exactly.
int decimals_of(std::int64_t nano, std::int64_t unit)
{
    int decimals = 0;
    for (std::int64_t place = unit; place > 1 && nano % place != 0; place /= 10)
        ++decimals;
    return decimals;
}

template<class Metric>
Metric to_serving_size(Metric size)
{
    return Metric::from_nano(to_step(size.nano(), band_at(serving_size_bands(), size.nano()).step));
}

template<class Metric>
Range<Metric> behind_serving_size(Metric printed)
{
    const auto bands = serving_size_bands();
    const std::int64_t above = band_at(bands, printed.nano()).step;
    const std::int64_t below = printed.nano() > 0 ? band_at(bands, printed.nano() - 1).step : above;
    return {Metric::from_nano(std::max<std::int64_t>(printed.nano() - below / 2, 1)),
            Metric::from_nano(printed.nano() + above / 2)};
}

} // namespace

Figure printed_figure(Nutrient nutrient, Content true_amount, Panel panel)
{
    const std::int64_t unit = nano_of(info(nutrient).unit);
    const std::int64_t value = true_amount.nano();
    if (const RoundingRule* rule = rounding_rule(nutrient, panel)) {
        if (rule->less_than != 0 && value >= rule->less_than_first && value < rule->less_than)
            return {Content::from_nano(rule->less_than), true, decimals_of(rule->less_than, unit)};
        if (value < rule->zero_below)
            return {};
        const std::int64_t printed = to_step(value, band_at(rule->bands, value).step);
        return {Content::from_nano(printed), false, decimals_of(printed, unit)};
    }
    const VitaminPlace* place = vitamin_place(nutrient);
    if (value < two_percent(nutrient, panel))
        return {};
    const std::int64_t printed = to_step(value, std::min(place->code_step, place->guidance_step));
    return {Content::from_nano(printed), false, decimals_of(printed, unit)};
}

std::optional<Range<Content>> range_behind(Nutrient nutrient, const Figure& figure, Panel panel)
{
    if (const RoundingRule* rule = rounding_rule(nutrient, panel))
        return typed<Content>(behind(*rule, figure.amount.nano(), figure.less_than));
    if (figure.less_than)
        return std::nullopt;
    return typed<Content>(behind_place(*vitamin_place(nutrient), figure.amount.nano(), panel));
}

Range<Content> range_behind_not_significant(Nutrient nutrient, Panel panel)
{
    const RoundingRule* rule = rounding_rule(nutrient, panel);
    return {Content{}, Content::from_nano(rule ? rule->may_be_left_out : two_percent(nutrient, panel))};
}

int printed_percent(PercentRounding rounding, Percent percent)
{
    const auto bands = percent_rule(rounding).bands;
    return static_cast<int>(to_step(percent.nano(), band_at(bands, percent.nano()).step) / Percent::whole(1).nano());
}

std::optional<Range<Percent>> range_behind(PercentRounding rounding, const PrintedPercent& printed)
{
    const std::int64_t nano = Percent::whole(printed.percent).nano();
    if (rounding == PercentRounding::None)
        return std::nullopt;
    return typed<Percent>(behind(percent_rule(rounding), nano, printed.less_than));
}

Count printed_servings(Count servings)
{
    return Count::from_nano(to_step(servings.nano(), band_at(serving_bands(), servings.nano()).step));
}

std::optional<Range<Count>> range_behind_about(Count printed)
{
    if (printed.nano() <= 0)
        return std::nullopt;
    return typed<Count>(behind_bands(serving_bands(), printed.nano()));
}

Mass printed_serving_size(Mass true_size)
{
    return to_serving_size(true_size);
}
Volume printed_serving_size(Volume true_size)
{
    return to_serving_size(true_size);
}
Range<Mass> range_behind_serving_size(Mass printed)
{
    return behind_serving_size(printed);
}
Range<Volume> range_behind_serving_size(Volume printed)
{
    return behind_serving_size(printed);
}

} // namespace core
