#include "core/audit/families.h"
#include "core/figure/percent.h"
#include "core/figure/rounding.h"

#include <bit>

namespace core::audited {
namespace {

using R = DoubtRule;
using N = Nutrient;

/// Calls `visit` with each nutrient of a set.
template<class Visit>
void each(Lines lines, Visit visit)
{
    for (; lines != 0; lines &= lines - 1)
        visit(static_cast<Nutrient>(std::countr_zero(lines)));
}

/// An amount as a figure with the fewest digits that print it.
Figure figure_of(Nutrient nutrient, std::int64_t nano)
{
    int decimals = 0;
    for (std::int64_t place = nano_of(info(nutrient).unit); place > 1 && nano % place != 0; place /= 10)
        ++decimals;
    return {Content::from_nano(nano), false, decimals};
}

/// What an amount may have been before it was written down wrongly.
struct Slip {
    std::int64_t times;
    std::int64_t over;
    R rule;
};

/// Ten first: it is the commonest slip, and small amounts fit a percent of 0 however they are divided.
constexpr Slip slips[] = {
    {10, 1, R::SlippedByTen},   {1, 10, R::SlippedByTen},  {1'000, 1, R::UnitSwapped},
    {1, 1'000, R::UnitSwapped}, {100, 1, R::SlippedByTen}, {1, 100, R::SlippedByTen},
};

/// International Units for micrograms or milligrams: vitamin D 40 IU a microgram, vitamin A 0.3 microgram an IU (as
/// retinol), vitamin E 0.67 milligram an IU (d-alpha-tocopherol). Source: federal table of unit conversions; vitamin D:
/// memory.
std::optional<Slip> international_units(Nutrient nutrient)
{
    if (nutrient == N::VitaminD)
        return Slip{1, 40, R::UnitSwapped};
    if (nutrient == N::VitaminA)
        return Slip{3, 10, R::UnitSwapped};
    if (nutrient == N::VitaminE)
        return Slip{67, 100, R::UnitSwapped};
    return std::nullopt;
}

/// The figure that a slip would have come from, where a label can print it.
std::optional<Figure> before(Nutrient nutrient, const Figure& found, const Slip& slip, Panel panel)
{
    const Wide nano = Wide{found.amount.nano()} * slip.times / slip.over;
    if (nano <= 0 || nano > Wide{1'000'000'000} * 100'000)
        return std::nullopt;
    const Figure figure = figure_of(nutrient, static_cast<std::int64_t>(nano));
    if (!range_behind(nutrient, figure, panel))
        return std::nullopt;
    return figure;
}

bool would_fit(const Facts& facts, Nutrient nutrient, const Figure& figure)
{
    const auto& label = facts.product.label;
    const Line line{figure, facts.line_of(nutrient).percent};
    return percent_fits(nutrient, line, label.panel, label.audience);
}

/// A line whose amount and percent exclude each other.
Doubt of_contradicted(const Facts& facts, Nutrient nutrient)
{
    const auto& label = facts.product.label;
    const Line& line = facts.line_of(nutrient);
    Doubt doubt{.rule = R::PercentAgainstAmount, .nutrient = nutrient, .found = line.amount, .percent = line.percent};
    doubt.right_percent = percent_daily_value(nutrient, line.amount->amount, label.panel, label.audience);
    const auto explained_by = [&](const Slip& slip) {
        const auto figure = before(nutrient, *line.amount, slip, label.panel);
        if (!figure || !would_fit(facts, nutrient, *figure))
            return false;
        doubt.rule = slip.rule;
        doubt.likely = figure;
        return true;
    };
    for (const Slip& slip : slips)
        if (explained_by(slip))
            return doubt;
    if (const auto units = international_units(nutrient))
        explained_by(*units);
    return doubt;
}

/// How many lines have amount and percent that exclude each other by these Daily Values.
int misfits(const Facts& facts, Panel panel, Audience audience)
{
    int count = 0;
    each(facts.amounts, [&](Nutrient nutrient) {
        const Line& line = facts.line_of(nutrient);
        count += line.percent && !percent_fits(nutrient, line, panel, audience) ? 1 : 0;
    });
    return count;
}

/// Whether every line that contradicts itself fits its percent once its amount is that of 100 g or mL.
bool percents_fit_per_hundred(const Facts& facts)
{
    const std::int64_t serving = (facts.serving.low + facts.serving.high) / 2;
    bool all = facts.has_serving;
    each(facts.contradicted, [&](Nutrient nutrient) {
        const Line& line = facts.line_of(nutrient);
        const Wide nano = Wide{line.amount->amount.nano()} * serving / 100'000'000'000;
        all = all && would_fit(facts, nutrient, printed_figure(nutrient, Content::from_nano(narrowed(nano))));
    });
    return all;
}

/// Whether an amount comes back to a figure that a label prints once it is taken as that of 100 g or mL.
bool comes_back(const Facts& facts, Nutrient nutrient)
{
    const Figure& found = *facts.line_of(nutrient).amount;
    std::int64_t half_digit = nano_of(info(nutrient).unit) / 2;
    for (int i = 0; i < found.decimals; ++i)
        half_digit /= 10;
    const std::int64_t serving = (facts.serving.low + facts.serving.high) / 2;
    const auto times_serving = [&](std::int64_t nano) { return narrowed(Wide{nano} * serving / 100'000'000'000); };
    const std::int64_t back = times_serving(found.amount.nano());
    const std::int64_t printed = printed_figure(nutrient, Content::from_nano(back)).amount.nano();
    const std::int64_t apart = back > printed ? back - printed : printed - back;
    return apart <= times_serving(half_digit) + 1;
}

bool is_per_hundred(const Facts& facts)
{
    constexpr std::int64_t hundred = 100'000'000'000;
    if (!facts.has_serving || (facts.serving.low <= hundred && hundred <= facts.serving.high))
        return false;
    if (std::popcount(facts.off_grid) >= 2) {
        bool all = true;
        each(facts.off_grid, [&](Nutrient nutrient) { all = all && comes_back(facts, nutrient); });
        if (all)
            return true;
    }
    return std::popcount(facts.contradicted) >= 3 && percents_fit_per_hundred(facts);
}

/// Daily Values that all percents fit, where those of this label fit several of them not.
std::optional<Doubt> other_daily_values(const Facts& facts)
{
    const auto& label = facts.product.label;
    const int here = std::popcount(facts.contradicted);
    if (here < 2)
        return std::nullopt;
    for (const Panel panel : {Panel::Of2016, Panel::Older})
        for (const Audience audience : {Audience::Adult, Audience::Ages1To3, Audience::Infant}) {
            if ((panel == label.panel && audience == label.audience) ||
                misfits(facts, panel, audience) > (here - 1) / 3)
                continue;
            if (audience == label.audience)
                return Doubt{.rule = R::OtherPanel, .panel = panel};
            return Doubt{.rule = R::OtherAudience, .panel = panel, .audience = audience};
        }
    return std::nullopt;
}

/// The other panel, where a single line speaks for it, no slip explains that line, and all others fit both.
std::optional<Panel> only_other_panel(const Facts& facts)
{
    const auto& label = facts.product.label;
    const Panel other = label.panel == Panel::Of2016 ? Panel::Older : Panel::Of2016;
    if (std::popcount(facts.contradicted) != 1 || facts.agreeing == 0 || misfits(facts, other, label.audience) > 0)
        return std::nullopt;
    return other;
}

/// An amount off the grid: in another unit, or no figure of a label.
Doubt of_off_grid(const Facts& facts, Nutrient nutrient)
{
    const Figure& found = *facts.line_of(nutrient).amount;
    constexpr std::int64_t five_milligrams = 5'000'000;
    if (info(nutrient).unit == Unit::Milligram && found.amount.nano() < five_milligrams && !found.less_than)
        if (const auto figure = before(nutrient, found, {1'000, 1, R::UnitSwapped}, facts.product.label.panel))
            return {.rule = R::UnitSwapped, .nutrient = nutrient, .found = found, .likely = figure};
    return {.rule = R::OffTheGrid, .nutrient = nutrient, .found = found};
}

/// Salt is 39.3 percent sodium (atomic weights), so nothing holds more than 40.
bool too_much_sodium(const Facts& facts)
{
    return facts.has(N::Sodium) && facts.has_serving && facts.of(N::Sodium).low / 2 > facts.serving.high / 5;
}

/// Of all foods brain holds most: 3 percent of its weight, a third of its fat (memory). So a
/// gram and more, and more than half of the fat, is no cholesterol of a food.
bool too_much_cholesterol(const Facts& facts)
{
    constexpr std::int64_t gram = 1'000'000'000;
    return facts.has(N::Cholesterol) && facts.knows(N::TotalFat) && facts.of(N::Cholesterol).low > gram &&
           facts.of(N::Cholesterol).low > facts.of(N::TotalFat).high / 2;
}

void doubt_thousandfold(const Facts& facts, Nutrient nutrient, std::vector<Doubt>& doubts)
{
    if ((facts.contradicted & bit(nutrient)) != 0)
        return; // told with its percent
    const Figure& found = *facts.line_of(nutrient).amount;
    doubts.push_back({.rule = R::UnitSwapped, .nutrient = nutrient, .found = found});
    doubts.back().likely = before(nutrient, found, {1, 1'000, R::UnitSwapped}, facts.product.label.panel);
}

/// Minerals, which no food holds many times the Daily Value of; vitamins are added to that much.
constexpr Lines minerals = bit(N::Calcium) | bit(N::Iron) | bit(N::Potassium) | bit(N::Phosphorus) | bit(N::Magnesium) |
                           bit(N::Zinc) | bit(N::Chloride);

/// A vitamin or mineral without a percent, as far from its Daily Value as no label prints it: below 0.05 percent, where
/// 21 CFR 101.9(c)(8)(iii) lets it be 0, or above twice it for minerals and vitamin D, above 50 times for other
/// vitamins (common practice).
std::optional<Slip> out_of_reach(const Facts& facts, Nutrient nutrient)
{
    const Line& line = facts.line_of(nutrient);
    if (line.percent)
        return std::nullopt;
    const std::int64_t daily = daily_nano(nutrient, Panel::Of2016, Audience::Adult);
    const std::int64_t nano = line.amount->amount.nano();
    if (daily == 0 || nano == 0)
        return std::nullopt;
    if (nano < daily / 2'000 && !line.worked_back)
        return Slip{1'000, 1, R::UnitSwapped};
    if (nutrient == N::VitaminD && nano > 2 * daily)
        return nano > 100 * daily ? Slip{1, 1'000, R::UnitSwapped} : Slip{1, 40, R::UnitSwapped};
    if (nano / ((bit(nutrient) & minerals) != 0 ? 2 : 50) > daily)
        return Slip{1, 1'000, R::UnitSwapped};
    return std::nullopt;
}

void doubt_far_amounts(const Facts& facts, std::vector<Doubt>& doubts)
{
    constexpr Lines vitamins = ~Lines{0} << static_cast<unsigned>(N::VitaminD);
    const Panel panel = facts.product.label.panel;
    each(facts.amounts & vitamins, [&](Nutrient nutrient) {
        if (const auto slip = out_of_reach(facts, nutrient)) {
            const Figure& found = *facts.line_of(nutrient).amount;
            doubts.push_back({.rule = R::UnitSwapped, .nutrient = nutrient, .found = found});
            doubts.back().likely = before(nutrient, found, *slip, panel);
        }
    });
    if (too_much_sodium(facts))
        doubt_thousandfold(facts, N::Sodium, doubts);
    if (too_much_cholesterol(facts))
        doubt_thousandfold(facts, N::Cholesterol, doubts);
}

} // namespace

void doubt_lines(const Facts& facts, std::vector<Doubt>& doubts)
{
    doubt_far_amounts(facts, doubts);
    if ((facts.contradicted | facts.off_grid | facts.percent_off) == 0)
        return;
    if (is_per_hundred(facts)) {
        doubts.push_back({.rule = R::PerHundred, .serving = facts.product.label.serving.metric});
        return;
    }
    each(facts.percent_off, [&](Nutrient nutrient) {
        doubts.push_back({.rule = R::OffTheGrid, .nutrient = nutrient, .percent = facts.line_of(nutrient).percent});
    });
    each(facts.off_grid & ~facts.contradicted,
         [&](Nutrient nutrient) { doubts.push_back(of_off_grid(facts, nutrient)); });
    if (auto other = other_daily_values(facts)) {
        doubts.push_back(std::move(*other));
        return;
    }
    each(facts.contradicted, [&](Nutrient nutrient) {
        Doubt doubt = of_contradicted(facts, nutrient);
        if (doubt.rule == R::PercentAgainstAmount)
            if (const auto panel = only_other_panel(facts))
                doubt = {.rule = R::OtherPanel, .panel = panel};
        doubts.push_back(std::move(doubt));
    });
}

void leave_out_what_follows(std::vector<Doubt>& doubts)
{
    Lines explained = 0;
    bool per_hundred = false;
    for (const Doubt& doubt : doubts) {
        const bool names_the_line = doubt.rule == R::SlippedByTen || doubt.rule == R::UnitSwapped;
        if (names_the_line && doubt.nutrient)
            explained |= bit(*doubt.nutrient);
        per_hundred = per_hundred || doubt.rule == R::PerHundred;
    }
    constexpr Lines energy_lines = bit(N::TotalFat) | bit(N::TotalCarbohydrate) | bit(N::Protein);
    const auto said = [&](const Doubt& doubt) {
        if (doubt.rule == R::PartOverWhole)
            return ((bit(*doubt.nutrient) | bit(*doubt.other)) & explained) != 0;
        if (doubt.rule == R::PartsOverWhole)
            return (bit(*doubt.nutrient) & explained) != 0;
        if (doubt.rule == R::Calories || doubt.rule == R::HeavierThanServing)
            return per_hundred || (energy_lines & explained) != 0;
        return doubt.rule == R::Kilojoules && per_hundred;
    };
    std::erase_if(doubts, said);
}

} // namespace core::audited
