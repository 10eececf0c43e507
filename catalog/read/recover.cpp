#include "catalog/read/recover.h"

#include "core/figure/daily_values.h"
#include "core/figure/rounding.h"
#include "core/figure/rounding_table.h"
#include "core/figure/wide.h"

#include <algorithm>
#include <array>
#include <optional>

namespace catalog {
namespace {

using core::Wide;

constexpr std::array<std::int64_t, 10> tens = {1,       10,        100,        1'000,       10'000,
                                               100'000, 1'000'000, 10'000'000, 100'000'000, 1'000'000'000};

std::int64_t power(int exponent)
{
    return tens[static_cast<std::size_t>(std::clamp(exponent, 0, 9))];
}

/// What a serving can hold, in billionths: every value that is rounded to the amount per 100, and the middle one.
struct Behind {
    std::int64_t low;
    std::int64_t middle;
    std::int64_t high;
    [[nodiscard]] bool holds(std::int64_t value) const { return low <= value && value <= high; }
};

/// Half a unit of the last digit to which an amount was rounded, in units of 10^-10.
std::int64_t half_digit(const ReleaseNutrient& nutrient, ReleaseAmount amount, int significant_digits)
{
    int decimals = nutrient.decimals;
    if (significant_digits > 0) {
        int digits = 0;
        for (std::uint32_t rest = amount.mantissa; rest > 0; rest /= 10)
            ++digits;
        decimals = std::min(decimals, significant_digits - (digits - amount.decimals));
    }
    return decimals >= 0 ? 5 * power(9 - decimals) : 5 * power(9) * power(-decimals);
}

std::int64_t clamped(Wide value)
{
    constexpr std::int64_t most = 4'000'000'000'000'000'000; // above anything that a package holds
    return value > most ? most : value < 0 ? 0 : static_cast<std::int64_t>(value);
}

Behind behind(const ReleaseNutrient& nutrient, ReleaseAmount amount, const ServingBehind& serving)
{
    const int decimals = std::clamp<int>(amount.decimals, 0, 9);
    const Wide tenth_billionths = static_cast<Wide>(amount.mantissa) * power(9 - decimals) * 10;
    const Wide half = half_digit(nutrient, amount, serving.significant_digits);
    const Wide factor = static_cast<Wide>(nutrient.unit_nano) * serving.micro;
    const Wide below = static_cast<Wide>(10'000'000'000) * 100 * 1'000'000;
    const auto in_serving = [&](Wide value, Wide rounding) {
        return clamped((std::max<Wide>(value, 0) * (factor / 1'000) + rounding) / (below / 1'000));
    };
    return {in_serving(tenth_billionths - half, below / 1'000 - 1), in_serving(tenth_billionths, below / 2'000),
            in_serving(tenth_billionths + half, 0)};
}

/// The number with the fewest digits that rounds to the amount: what a label printed that does not keep to the rule.
core::Figure simplest(const Behind& behind, std::int64_t unit)
{
    for (int decimals = 0; decimals < 4; ++decimals) {
        const std::int64_t step = unit / power(decimals);
        if (step == 0)
            break;
        const std::int64_t nearest = (behind.middle + step / 2) / step * step;
        if (behind.holds(nearest))
            return {core::Content::from_nano(nearest), false, decimals};
    }
    const std::int64_t step = std::max<std::int64_t>(unit / 100, 1);
    return {core::Content::from_nano((behind.middle + step / 2) / step * step), false, unit >= 100 ? 2 : 0};
}

struct Amount {
    core::Figure figure;
    bool certain;
};

/// Smaller amounts than this between two figures are never printed; 0: the place is not fixed.
std::int64_t smallest_step(core::Nutrient nutrient)
{
    switch (core::info(nutrient).rounding) {
    case core::Rounding::Calories:
        return 5'000'000'000;
    case core::Rounding::Fat:
        return 500'000'000;
    case core::Rounding::Carbohydrate:
        return 1'000'000'000;
    case core::Rounding::Cholesterol:
    case core::Rounding::Sodium:
        return 5'000'000;
    case core::Rounding::Fluoride:
    case core::Rounding::Vitamin:
        break;
    }
    return 0;
}

/// The place to which the label of a vitamin or mineral is printed; 0 for what is rounded in bands.
std::int64_t vitamin_step(core::Nutrient nutrient, core::Panel panel)
{
    if (core::rounding_rule(nutrient, panel))
        return 0;
    const auto* place = core::vitamin_place(nutrient);
    return std::min(place->code_step, place->guidance_step);
}

/// The nearest printable figure, "less than" left out: that stands under a derivation of its own.
core::Figure on_the_grid(core::Nutrient nutrient, std::int64_t nano, core::Panel panel)
{
    if (const auto step = vitamin_step(nutrient, panel)) {
        // Below 2 % of the Daily Value a label may print 0; those in the release print the amount.
        const std::int64_t printed = (nano + step / 2) / step * step;
        int decimals = 0;
        for (std::int64_t unit = core::nano_of(core::info(nutrient).unit); printed % unit != 0; unit /= 10)
            ++decimals;
        return {core::Content::from_nano(printed), false, decimals};
    }
    auto figure = core::printed_figure(nutrient, core::Content::from_nano(nano), panel);
    figure.less_than = false;
    return figure;
}

/// Whether no other printable figure rounds to the same amount per 100.
bool stands_alone(core::Nutrient nutrient, const core::Figure& figure, const Behind& behind, core::Panel panel)
{
    const std::int64_t nano = figure.amount.nano();
    if (behind.high - behind.low < smallest_step(nutrient))
        return true;
    if (const auto step = vitamin_step(nutrient, panel))
        return nano - step < behind.low && nano + step > behind.high;
    const auto range = core::range_behind(nutrient, figure, panel);
    if (!range)
        return true;
    const auto below = on_the_grid(nutrient, std::max<std::int64_t>(range->low.nano() - 1, 0), panel).amount.nano();
    const auto above = on_the_grid(nutrient, range->high.nano(), panel).amount.nano();
    return (below == nano || below < behind.low) && above > behind.high;
}

Amount amount_behind(const ReleaseNutrient& nutrient, const Behind& behind, core::Panel panel, Derivation derivation)
{
    if (derivation == Derivation::PerHundred) { // finer than a label: the label rounds it
        const auto low = core::printed_figure(nutrient.nutrient, core::Content::from_nano(behind.low), panel);
        const auto high = core::printed_figure(nutrient.nutrient, core::Content::from_nano(behind.high), panel);
        return {core::printed_figure(nutrient.nutrient, core::Content::from_nano(behind.middle), panel), low == high};
    }
    const auto figure = on_the_grid(nutrient.nutrient, behind.middle, panel);
    const std::int64_t nano = figure.amount.nano();
    if (!behind.holds(nano))
        return {simplest(behind, core::nano_of(core::info(nutrient.nutrient).unit)), false};
    return {figure, stands_alone(nutrient.nutrient, figure, behind, panel)};
}

/// The percent that a label prints for this much; certain where only one printable percent rounds to it.
core::Line percent_line(const ReleaseNutrient& nutrient, const Behind& behind, std::int64_t daily_value)
{
    const auto printed = [&](std::int64_t nano) {
        const auto percent = core::Percent::from_nano(
            clamped(static_cast<Wide>(nano) * 100 * core::Percent::whole(1).nano() / daily_value));
        return core::printed_percent(core::info(nutrient.nutrient).percent, percent);
    };
    core::Line line;
    const int percent = printed(behind.middle);
    line.percent = core::PrintedPercent{std::min(percent, 9'999), false};
    const std::int64_t back = clamped(static_cast<Wide>(daily_value) * percent / 100);
    line.worked_back = !behind.holds(back) || printed(behind.low) != percent || printed(behind.high) != percent;
    return line;
}

/// The Daily Value of which a label of this format prints percents; nothing where it prints amounts.
std::optional<std::int64_t> daily_value_of(const ReleaseNutrient& nutrient, core::Panel panel)
{
    if (nutrient.daily_value_of_percent > 0)
        return nutrient.daily_value_of_percent * nutrient.unit_nano;
    const auto value = core::daily_value(nutrient.nutrient, panel, core::Audience::Adult);
    if (!value || value->nano() == 0)
        return std::nullopt;
    return value->nano();
}

bool prints_percent_only(const ReleaseNutrient& nutrient, Derivation derivation, core::Panel panel)
{
    if (nutrient.daily_value_of_percent > 0)
        return true;
    if (core::info(nutrient.nutrient).rounding != core::Rounding::Vitamin)
        return false;
    if (derivation == Derivation::PercentOnly)
        return true;
    // Before 2016 vitamins and minerals stand on a label as percents; sodium and potassium as amounts.
    return panel == core::Panel::Older && nutrient.nutrient != core::Nutrient::Potassium;
}

} // namespace

Derivation derivation_of(std::uint32_t id)
{
    switch (id) {
    case 0:
        return Derivation::None;
    case 70:
    case 71:
        return Derivation::PerServing;
    case 73:
        return Derivation::LessThan;
    case 75:
        return Derivation::PercentOnly;
    case 78:
        return Derivation::PerHundred;
    default:
        return Derivation::Other;
    }
}

core::Line recover(const ReleaseNutrient& nutrient, ReleaseAmount amount, Derivation derivation,
                   const ServingBehind& serving)
{
    const auto in_serving = behind(nutrient, amount, serving);
    core::Line line;
    if (const auto daily_value = daily_value_of(nutrient, serving.panel);
        daily_value && prints_percent_only(nutrient, derivation, serving.panel))
        line = percent_line(nutrient, in_serving, *daily_value);
    else {
        const auto found = amount_behind(nutrient, in_serving, serving.panel, derivation);
        line.amount = found.figure;
        line.amount->less_than =
            line.amount->less_than || (derivation == Derivation::LessThan && found.figure.amount.nano() > 0);
        line.worked_back = !found.certain;
    }
    if (derivation == Derivation::None)
        line.worked_back = true;
    return line;
}

} // namespace catalog
