#include "core/compare/shown_figure.h"

#include "core/figure/wide.h"
#include "core/label/content_behind.h"

#include <algorithm>
#include <limits>

namespace core {
namespace {

constexpr std::int64_t one = 1'000'000'000;
constexpr std::int64_t most_percent = 1'000'000;

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

/// A division has no end: whole calories and milligrams, tenths of grams and micrograms are worth showing.
int most_digits(const ServingLine& from, std::int64_t nano)
{
    if (from.basis == Basis::Package)
        return 2; // a product comes out even
    const auto unit = info(from.nutrient).unit;
    const bool many = nano >= 10 * nano_of(unit); // 0.6 mg of iron must not show as 1 mg
    return unit == Unit::Kilocalorie || (unit == Unit::Milligram && many) ? 0 : 1;
}

/// What "less than so much" in a serving is a bound of elsewhere: for the largest amount behind the basis, and rounded
/// up to the last place shown. Rounded to the nearest it would bound nothing.
std::int64_t bound_of(std::int64_t nano, const Scale& scale, std::int64_t unit, int decimals)
{
    std::int64_t place = unit;
    for (int i = 0; i < decimals; ++i)
        place /= 10;
    return narrowed(Wide{place} * rounded_up(Wide{nano} * scale.high_over, Wide{scale.high_under} * place));
}

void scale_figure(Shown& shown, const ServingLine& from, const Factor& factor)
{
    Figure& figure = *shown.figure;
    const std::int64_t unit = nano_of(info(from.nutrient).unit);
    const std::int64_t serving = figure.amount.nano();
    const std::int64_t nano = rounded_nearest(Wide{serving} * factor.taught.over, factor.taught.under);
    const int most = most_digits(from, nano);
    figure.amount = showable(from.nutrient, nano);
    if (figure.less_than && from.basis != Basis::Package)
        figure.amount = showable(from.nutrient, bound_of(serving, factor.range, unit, most));
    figure.decimals = digits_worth_showing(figure.amount.nano(), unit, most);
    shown.say_range = is_eaten(from.basis) && (figure.less_than || nano == 0);
    if (shown.source == Source::Printed)
        shown.source = Source::WorkedOut;
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

/// The taught product of a printed whole percent, halves up.
int times_taught(int percent, Ratio taught)
{
    return static_cast<int>(std::min(most_percent, rounded_nearest(Wide{percent} * taught.over, taught.under)));
}

/// The percent of what is eaten: taught as printed percent times so many servings.
void take_taught_percent(ShownPercent& percent, const Factor& factor)
{
    percent.label_reading = percent.reading;
    percent.percent = times_taught(percent.percent, factor.taught);
    percent.say_range = must_say(percent);
    percent.reading = percent.range ? reading_of(*percent.range) : reading_of(Percent::whole(percent.percent));
}

/// The percent of equal amounts: counted from the printed amount, which is finer, where there is one.
void take_counted_percent(ShownPercent& percent, const Factor& factor, std::optional<Figure> printed,
                          std::optional<Content> daily)
{
    percent.reading.reset();
    if (printed && daily)
        percent.percent = static_cast<int>(
            std::min(most_percent, rounded_nearest(Wide{printed->amount.nano()} * factor.taught.over * 100,
                                                   Wide{daily->nano()} * factor.taught.under)));
    else
        percent.percent = times_taught(percent.percent, factor.taught);
}

void scale_percent(Shown& shown, const ServingLine& from, const Factor& factor, std::optional<Figure> printed)
{
    ShownPercent& percent = *shown.percent;
    percent.source = Source::WorkedOut;
    const auto daily = from.nutrient == Nutrient::Protein ? std::nullopt // its percent counts quality, not amount
                                                          : daily_value_or(from.label, from.nutrient, from.nominal);
    if (from.content && daily)
        percent.range = percents(*from.content, factor.range, *daily);
    if (is_eaten(from.basis))
        take_taught_percent(percent, factor);
    else
        take_counted_percent(percent, factor, printed, daily);
}

} // namespace

bool is_eaten(Basis basis)
{
    return basis == Basis::Package || basis == Basis::MyAmount;
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

void scale_shown(Shown& shown, const ServingLine& from, const Factor& factor)
{
    const auto printed = shown.figure;
    const bool printed_for_it = from.basis == Basis::SameAmount && factor.taught == Ratio{1, 1};
    if (shown.figure && !printed_for_it)
        scale_figure(shown, from, factor);
    if (shown.range)
        shown.range = scaled(from.nutrient, *shown.range, factor.range);
    if (shown.percent)
        scale_percent(shown, from, factor, printed);
}

} // namespace core
