#include "core/compare/measured.h"

#include "core/compare/content_behind.h"
#include "core/figure/daily_values.h"
#include "core/figure/rounding.h"

#include <algorithm>
#include <limits>

namespace core {
namespace {

constexpr std::int64_t one = 1'000'000'000;
constexpr Scale as_it_is{one, one, one, one};

/// No more than whoever prints it can count in the nutrient's own unit; only a hostile label gets there.
Content showable(Nutrient nutrient, std::int64_t nano)
{
    return Content::from_nano(
        std::min(nano, std::numeric_limits<std::int64_t>::max() / (2 * one) * nano_of(info(nutrient).unit)));
}

Range<Content> scaled(Nutrient nutrient, Range<Content> content, const Scale& scale)
{
    return {showable(nutrient, rounded_down(Wide{content.low.nano()} * scale.low_over, scale.low_under)),
            showable(nutrient, rounded_up(Wide{content.high.nano()} * scale.high_over, scale.high_under))};
}

/// True percents on the basis, edges rounded outwards.
Range<Percent> percents(Range<Content> content, const Scale& scale, Content daily)
{
    const Wide hundred = Percent::whole(100).nano();
    return {Percent::from_nano(rounded_down(Wide{content.low.nano()} * scale.low_over * hundred,
                                            Wide{daily.nano()} * scale.low_under)),
            Percent::from_nano(rounded_up(Wide{content.high.nano()} * scale.high_over * hundred,
                                          Wide{daily.nano()} * scale.high_under))};
}

/// The fewest digits behind the point, at most `most`, that show this many of a unit.
int digits_worth_showing(std::int64_t nano, std::int64_t unit, int most)
{
    int decimals = 0;
    for (std::int64_t place = unit; decimals < most && place > 1 && nano % place != 0; place /= 10)
        ++decimals;
    return decimals;
}

/// Whether the taught percent alone would mislead: more than 2 points off some true value, or read otherwise.
bool must_say(const ShownPercent& shown)
{
    if (!shown.range)
        return false;
    const Percent taught = Percent::whole(shown.percent);
    const Percent two = Percent::whole(2);
    return taught - shown.range->low > two || shown.range->high - taught > two ||
           reading_of(*shown.range) != reading_of(taught);
}

/// Why nothing is known behind a line that is there.
Why why_nothing(const Label& label, const Line* line, Nutrient nutrient, std::optional<Content> nominal)
{
    if (line && line->amount)
        return Why::FigureOffTheRule;
    if (nutrient == Nutrient::Protein)
        return Why::Comparable; // its percent says nothing of an amount: that is not printed
    return line && daily_value_or(label, nutrient, nominal) ? Why::FigureOffTheRule : Why::PercentsOfUnlikeLabels;
}

Measured printed(const Label& label, const Column& column, Nutrient nutrient, std::optional<Content> nominal)
{
    Measured side;
    side.multiplied = false;
    if (!prints(column, nutrient))
        return side;
    const Line* line = column.find(nutrient);
    side.shown.source = line ? Source::Printed : Source::NotSignificant;
    if (line)
        side.shown.figure = line->amount;
    side.shown.percent = percent_of_column(label, column, nutrient);
    side.content = content_behind(label, column, nutrient, nominal);
    if (!side.content) {
        side.why = why_nothing(label, line, nutrient, nominal);
        return side;
    }
    if (!nominal)
        side.shown.range = side.content;
    side.range = product(*side.content, Count::whole(1));
    return side;
}

/// The taught product of a printed whole percent and a number of servings, halves up.
int taught_percent(int percent, Count servings)
{
    constexpr std::int64_t most = 1'000'000;
    return static_cast<int>(std::min(most, rounded_nearest(Wide{percent} * servings.nano(), one)));
}

ShownPercent percent_of_package(const Label& label, Nutrient nutrient, const ShownPercent& serving,
                                std::optional<Content> nominal, const Measured& one_serving, const Scale& scale)
{
    ShownPercent shown = serving;
    shown.percent = taught_percent(serving.percent, label.servings.count);
    shown.source = Source::WorkedOut;
    const auto daily = daily_value_or(label, nutrient, nominal);
    if (one_serving.content && daily && nutrient != Nutrient::Protein)
        shown.range = percents(*one_serving.content, scale, *daily);
    shown.say_range = must_say(shown);
    shown.reading = shown.range ? reading_of(*shown.range) : reading_of(Percent::whole(shown.percent));
    shown.label_reading = serving.reading;
    return shown;
}

std::optional<ShownPercent> percent_of_hundred(const Label& label, Nutrient nutrient, const Measured& one_serving,
                                               std::optional<Content> nominal)
{
    if (!one_serving.shown.percent)
        return std::nullopt;
    ShownPercent shown = *one_serving.shown.percent;
    shown.source = Source::WorkedOut;
    shown.reading.reset();
    const auto& size = *label.serving.metric;
    const std::int64_t serving = std::visit([](auto measure) { return measure.nano(); }, size);
    const auto daily = daily_value_or(label, nutrient, nominal);
    if (one_serving.shown.figure && daily && nutrient != Nutrient::Protein)
        shown.percent = static_cast<int>(std::min<std::int64_t>(
            1'000'000, rounded_nearest(Wide{one_serving.shown.figure->amount.nano()} * 100 * one * 100,
                                       Wide{daily->nano()} * serving)));
    else
        shown.percent = static_cast<int>(
            std::min<std::int64_t>(1'000'000, rounded_nearest(Wide{shown.percent} * 100 * one, serving)));
    if (one_serving.content && daily && nutrient != Nutrient::Protein)
        shown.range = percents(*one_serving.content, hundred_scale(size), *daily);
    return shown;
}

/// What "less than so much" in a serving is a bound of in 100 g: for the smallest serving behind the printed one, and
/// rounded up to the last place shown. Rounded to the nearest it would bound nothing.
std::int64_t bound_of_hundred(std::int64_t nano, const Measure& size, std::int64_t unit, int decimals)
{
    const Scale scale = hundred_scale(size);
    std::int64_t place = unit;
    for (int i = 0; i < decimals; ++i)
        place /= 10;
    return narrowed(Wide{place} * rounded_up(Wide{nano} * scale.high_over, Wide{scale.high_under} * place));
}

} // namespace

bool prints(const Column& column, Nutrient nutrient)
{
    const Line* line = column.find(nutrient);
    return line ? line->amount || line->percent : column.not_significant.contains(nutrient);
}

std::optional<Scale> package_scale(const ServingsPerContainer& servings)
{
    using Kind = ServingsPerContainer::Kind;
    if (servings.kind == Kind::Number || servings.kind == Kind::Single)
        return Scale{servings.count.nano(), one, servings.count.nano(), one};
    if (servings.kind != Kind::About)
        return std::nullopt;
    const auto range = range_behind_about(servings.count);
    if (!range)
        return std::nullopt;
    return Scale{range->low.nano(), one, range->high.nano(), one};
}

Scale hundred_scale(const Measure& serving)
{
    return std::visit(
        [](auto printed) {
            const auto range = range_behind_serving_size(printed);
            return Scale{100 * one, range.high.nano(), 100 * one, range.low.nano()};
        },
        serving);
}

std::optional<ShownPercent> percent_of_column(const Label& label, const Column& column, Nutrient nutrient)
{
    const Line* line = column.find(nutrient);
    if (!line)
        return std::nullopt;
    ShownPercent shown;
    if (line->percent) {
        shown.percent = line->percent->percent;
        shown.less_than = line->percent->less_than;
    } else {
        if (!line->amount || line->amount->less_than || nutrient == Nutrient::Protein)
            return std::nullopt;
        const auto percent = percent_daily_value(nutrient, line->amount->amount, label.panel, label.audience);
        if (!percent)
            return std::nullopt;
        shown.percent = *percent;
        shown.source = Source::WorkedOut;
    }
    shown.reading = reading_of(Percent::whole(shown.percent));
    return shown;
}

Measured measured_serving(const Label& label, Nutrient nutrient, std::optional<Content> nominal)
{
    return printed(label, label.per_serving, nutrient, nominal);
}

Measured measured_package(const Label& label, Nutrient nutrient, std::optional<Content> nominal)
{
    if (const Column* column = per_container(label)) {
        Measured side = printed(label, *column, nutrient, nominal);
        if (side.shown.source != Source::NotPrinted) {
            const auto serving = percent_of_column(label, label.per_serving, nutrient);
            if (side.shown.percent && serving)
                side.shown.percent->label_reading = serving->reading;
            return side;
        }
    }
    Measured side = printed(label, label.per_serving, nutrient, nominal);
    const auto scale = package_scale(label.servings);
    if (side.shown.source == Source::NotPrinted || label.servings.count == Count::whole(1))
        if (label.servings.kind != ServingsPerContainer::Kind::About)
            return side;
    if (!scale)
        return Measured{{}, std::nullopt, std::nullopt, comparable_on(Basis::Package, label, label), true};
    const Measured serving = side;
    side.multiplied = true;
    if (side.shown.figure) {
        Figure& figure = *side.shown.figure;
        const std::int64_t nano = rounded_nearest(Wide{figure.amount.nano()} * label.servings.count.nano(), one);
        figure.amount = showable(nutrient, nano);
        figure.decimals = digits_worth_showing(nano, nano_of(info(nutrient).unit), 2);
        side.shown.say_range = figure.less_than || nano == 0;
    }
    if (side.shown.source == Source::Printed)
        side.shown.source = Source::WorkedOut;
    if (serving.shown.range)
        side.shown.range = scaled(nutrient, *serving.shown.range, *scale);
    if (serving.content)
        side.range = WideRange{Wide{serving.content->low.nano()} * scale->low_over,
                               Wide{serving.content->high.nano()} * scale->high_over};
    if (serving.shown.percent)
        side.shown.percent = percent_of_package(label, nutrient, *serving.shown.percent, nominal, serving, *scale);
    return side;
}

Measured measured_hundred(const Label& label, Nutrient nutrient, const Measure& other_serving,
                          std::optional<Content> nominal)
{
    const Measured serving = printed(label, label.per_serving, nutrient, nominal);
    if (serving.shown.source == Source::NotPrinted)
        return serving;
    Measured side = serving;
    const Measure& size = *label.serving.metric;
    const std::int64_t nano = std::visit([](auto measure) { return measure.nano(); }, size);
    side.multiplied = nano != 100 * one;
    side.shown.percent = percent_of_hundred(label, nutrient, serving, nominal);
    if (side.shown.figure && side.multiplied) {
        Figure& figure = *side.shown.figure;
        const std::int64_t unit = nano_of(info(nutrient).unit);
        figure.amount = showable(nutrient, rounded_nearest(Wide{figure.amount.nano()} * 100 * one, nano));
        // A division has no end: whole calories and milligrams, tenths of grams and micrograms are worth showing.
        const bool many = figure.amount.nano() >= 10 * unit; // 0.6 mg of iron must not show as 1 mg
        const bool whole = info(nutrient).unit == Unit::Kilocalorie || (info(nutrient).unit == Unit::Milligram && many);
        const int most = whole ? 0 : 1;
        if (figure.less_than)
            figure.amount = showable(nutrient, bound_of_hundred(serving.shown.figure->amount.nano(), size, unit, most));
        figure.decimals = digits_worth_showing(figure.amount.nano(), unit, most);
        side.shown.source = Source::WorkedOut;
    }
    if (serving.shown.range)
        side.shown.range = scaled(nutrient, *serving.shown.range, hundred_scale(size));
    if (serving.content)
        side.range = std::visit([&](auto other) { return product(*serving.content, range_behind_serving_size(other)); },
                                other_serving);
    return side;
}

} // namespace core
