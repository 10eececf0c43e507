#include "core/label/content_behind.h"

#include "core/figure/daily_values.h"
#include "core/figure/percent.h"
#include "core/figure/rounding.h"
#include "core/figure/rounding_table.h"
#include "core/figure/wide.h"

#include <algorithm>

namespace core {
namespace {

Range<Content> both(Range<Content> a, Range<Content> b)
{
    return {std::min(a.low, b.low), std::max(a.high, b.high)};
}

/// Vitamins and minerals: a place each, and left out below 2 percent of a Daily Value (21 CFR 101.9(c)(8)(iii)).
bool is_vitamin(Nutrient nutrient, Panel panel)
{
    return rounding_rule(nutrient, panel) == nullptr;
}

/// What a label may leave out or print as 0. Two percent before 2016 was two percent of the Daily Value before 2016.
std::optional<Range<Content>> behind_nothing(const Label& label, Nutrient nutrient, std::optional<Content> nominal)
{
    const bool vitamin = is_vitamin(nutrient, label.panel);
    if (!nominal && (label.panel == Panel::Of2016 || !vitamin))
        return range_behind_not_significant(nutrient, label.panel);
    const auto daily = nominal ? nominal : daily_value(nutrient, Panel::Older, Audience::Adult);
    if (!daily || !vitamin)
        return std::nullopt;
    return Range<Content>{Content{}, Content::from_nano(daily->nano() / 50)};
}

/// Calls `visit` with the printable figures of a range that stand next to its edges, for a vitamin in each of its
/// places.
template<class Visit>
void for_figures_at_edges(Range<Content> range, Nutrient nutrient, Panel panel, Visit visit)
{
    if (!is_vitamin(nutrient, panel)) {
        visit(printed_figure(nutrient, range.low, panel));
        visit(printed_figure(nutrient, range.high, panel));
        return;
    }
    const VitaminPlace& place = *vitamin_place(nutrient);
    for (std::int64_t step = std::max(place.code_step, place.guidance_step); step >= 1; step /= 10) {
        visit(Figure{Content::from_nano((range.low.nano() + step - 1) / step * step)});
        visit(Figure{Content::from_nano(range.high.nano() / step * step)});
    }
}

/// Whether an amount comes to this percent; at the upper edge only as a half that was rounded down, which is none where
/// the edge is that of "less than" or of what may print as 0.
bool comes_to(Content amount, Range<Content> behind, const PrintedPercent& percent, PercentRounding rounding)
{
    const bool edge_is_half = !percent.less_than && (percent.percent > 0 || rounding == PercentRounding::Whole);
    return behind.low <= amount && (amount < behind.high || (edge_is_half && amount == behind.high));
}

/// A maker may also count the percent from the amount as it would be printed (21 CFR 101.9(d)(7)(ii)): whatever such
/// an amount stands for is possible too. Saturated fat of 1.25 g prints as 1.5 g, which is 7.5 and so 8 percent.
Range<Content> counted_from_printed(Range<Content> behind, Nutrient nutrient, Panel panel,
                                    const PrintedPercent& percent)
{
    Range<Content> all = behind;
    const auto add = [&](const Figure& figure) {
        if (!comes_to(figure.amount, behind, percent, percent_rounding(nutrient, panel)))
            return;
        if (const auto more = range_behind(nutrient, figure, panel))
            all = both(all, *more);
    };
    add(Figure{});
    for_figures_at_edges(behind, nutrient, panel, add); // of all that print, only these reach across
    return all;
}

std::optional<Range<Content>> behind_percent(const Label& label, Nutrient nutrient, const PrintedPercent& percent,
                                             std::optional<Content> nominal)
{
    const auto behind = content_of_percent(label, nutrient, percent, nominal);
    // Before 2016 vitamins had no printed amount to count from; a nominal value has none either.
    if (!behind || nominal || (is_vitamin(nutrient, label.panel) && label.panel == Panel::Older))
        return behind;
    return counted_from_printed(*behind, nutrient, label.panel, percent);
}

} // namespace

const Column* per_container(const Label& label)
{
    const bool printed = label.second && label.second->kind == SecondColumn::Kind::PerContainer;
    return printed ? &label.second->column : nullptr;
}

std::optional<Content> daily_value_or(const Label& label, Nutrient nutrient, std::optional<Content> nominal)
{
    const auto value = daily_value(nutrient, label.panel, label.audience);
    return value ? value : nominal;
}

std::optional<Content> nominal_value(const Label& left, const Label& right, Nutrient nutrient)
{
    if (left.panel != right.panel || left.audience != right.audience ||
        daily_value(nutrient, left.panel, left.audience))
        return std::nullopt;
    bool a_percent = false;
    for (const Label* label : {&left, &right})
        for (const Column* column : {&label->per_serving, per_container(*label)})
            if (const Line* line = column ? column->find(nutrient) : nullptr) {
                if (line->amount)
                    return std::nullopt;
                a_percent = a_percent || line->percent;
            }
    if (!a_percent)
        return std::nullopt;
    return Content::whole(1);
}

std::optional<Range<Content>> content_of_percent(const Label& label, Nutrient nutrient, const PrintedPercent& percent,
                                                 std::optional<Content> nominal)
{
    const auto daily = daily_value_or(label, nutrient, nominal);
    const auto percents = range_behind(percent_rounding(nutrient, label.panel), percent);
    if (!daily || !percents || nutrient == Nutrient::Protein)
        return std::nullopt;
    const Wide hundred = Percent::whole(100).nano();
    return Range<Content>{Content::from_nano(rounded_down(Wide{percents->low.nano()} * daily->nano(), hundred)),
                          Content::from_nano(rounded_up(Wide{percents->high.nano()} * daily->nano(), hundred))};
}

bool counted_from_amount(const Label& label, Nutrient nutrient, const Line& line)
{
    if (!line.amount || !line.percent)
        return false;
    const auto behind = content_of_percent(label, nutrient, *line.percent);
    const auto rounding = percent_rounding(nutrient, label.panel);
    return behind && comes_to(line.amount->amount, *behind, *line.percent, rounding);
}

std::optional<Range<Content>> content_behind(const Label& label, const Column& column, Nutrient nutrient,
                                             std::optional<Content> nominal)
{
    const Line* line = column.find(nutrient);
    if (!line)
        return column.not_significant.contains(nutrient) ? behind_nothing(label, nutrient, nominal) : std::nullopt;
    if (!line->amount)
        return line->percent ? behind_percent(label, nutrient, *line->percent, nominal) : std::nullopt;
    auto behind = range_behind(nutrient, *line->amount, label.panel);
    if (behind && line->amount->amount == Content{} && is_vitamin(nutrient, label.panel))
        if (const auto nothing = behind_nothing(label, nutrient, std::nullopt))
            behind = both(*behind, *nothing);
    return behind;
}

} // namespace core
