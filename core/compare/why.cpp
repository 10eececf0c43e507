#include "core/compare/why.h"

#include "core/compare/shown_figure.h"
#include "core/figure/rounding_table.h"
#include "core/label/content_behind.h"

#include <algorithm>

namespace core {
namespace {

using Kind = Step::Kind;

Step step(Kind kind, std::string_view citation = {})
{
    Step made{};
    made.kind = kind;
    made.citation = citation;
    return made;
}

Step ranged(Kind kind, Range<Content> range, std::string_view citation = {})
{
    Step made = step(kind, citation);
    made.range = range;
    return made;
}

/// The steps that read one line backwards.
class LineSteps {
public:
    LineSteps(const ReadLabel& side, Nutrient nutrient, Basis basis, std::vector<Step>& steps)
        : label_(side.label), nutrient_(nutrient), basis_(basis), back_(backwards(side, nutrient, basis)), steps_(steps)
    {
    }

    void write()
    {
        const Column& column = column_for(label_, nutrient_, basis_);
        const Line* line = column.find(nutrient_);
        if (!line)
            return nothing_printed(column);
        Step printed = step(Kind::Printed);
        printed.line = *line;
        steps_.push_back(printed);
        amount_and_percent(*line);
        parts_and_wholes();
        if (back_.contradiction) {
            Step against = step(Kind::Contradicts);
            against.contradiction = back_.contradiction;
            against.other = back_.against;
            steps_.push_back(against);
        }
    }

private:
    void nothing_printed(const Column& column)
    {
        if (!column.not_significant.contains(nutrient_))
            return steps_.push_back(step(Kind::NotPrinted));
        Step said = step(Kind::NotSignificant, rounding_citation(nutrient_, label_.panel));
        said.range = back_.content;
        steps_.push_back(said);
        parts_and_wholes();
    }

    void amount_and_percent(const Line& line)
    {
        if (back_.from_amount)
            steps_.push_back(
                ranged(Kind::AmountStandsFor, *back_.from_amount, rounding_citation(nutrient_, label_.panel)));
        if (!line.percent || !back_.from_percent)
            return;
        Step percent = ranged(Kind::PercentStandsFor, *back_.from_percent,
                              percent_rule(percent_rounding(nutrient_, label_.panel)).citation);
        percent.daily = daily_value_or(label_, nutrient_, std::nullopt);
        percent.line = line;
        steps_.push_back(percent);
        if (back_.percent_of_amount)
            steps_.push_back(step(Kind::PercentOfAmount, "21 CFR 101.9(d)(7)(ii)"));
        else if (line.amount && !back_.contradiction)
            steps_.push_back(ranged(Kind::Together, alone()));
    }

    /// Amount and percent together, before parts and wholes narrowed them.
    [[nodiscard]] Range<Content> alone() const
    {
        return {std::max(back_.from_amount->low, back_.from_percent->low),
                std::min(back_.from_amount->high, back_.from_percent->high)};
    }

    void parts_and_wholes()
    {
        for (const auto& [kind, other] :
             {std::pair{Kind::NoMoreThanWhole, back_.whole}, std::pair{Kind::NoLessThanPart, back_.part}})
            if (other && back_.content) {
                Step held = ranged(kind, *back_.content, "21 CFR 101.9(c)");
                held.other = other;
                steps_.push_back(held);
            }
    }

    const Label& label_;
    Nutrient nutrient_;
    Basis basis_;
    const Backwards& back_;
    std::vector<Step>& steps_;
};

bool is_package(const Ground& ground)
{
    return ground.basis == Basis::Package ||
           (ground.basis == Basis::MyAmount && ground.amount.of == MyAmount::Of::Package);
}

void add_serving(const Sizes& sizes, std::vector<Step>& steps)
{
    Step size = step(Kind::ServingStandsFor, "21 CFR 101.9(b)(7)(ii)");
    size.span = sizes.serving;
    size.narrowed = sizes.serving_narrowed;
    steps.push_back(size);
}

void add_servings(const Sizes& sizes, std::vector<Step>& steps)
{
    Step count = step(Kind::ServingsStandFor, "21 CFR 101.9(b)(8)(i)");
    count.span = sizes.servings;
    count.narrowed = sizes.servings_narrowed;
    steps.push_back(count);
}

void add_sizes(const ReadLabel& side, const Ground& ground, std::vector<Step>& steps)
{
    const auto& sizes = side.sharp.sizes;
    if (ground.basis == Basis::SameAmount && sizes.serving)
        add_serving(sizes, steps);
    if (is_package(ground) && sizes.servings && !sizes.servings->exact())
        add_servings(sizes, steps);
}

void add_percent(const Shown& shown, const ReadLabel& side, Nutrient nutrient, const Ground& ground, Ratio times,
                 std::vector<Step>& steps)
{
    if (!shown.percent)
        return;
    const bool counted = !is_eaten(ground.basis) && shown.figure;
    Step percent = step(counted ? Kind::PercentFromAmount : Kind::PercentTimes,
                        counted ? daily_value_citation(nutrient, side.label.panel) : std::string_view{});
    percent.times = times;
    percent.percent = shown.percent->percent;
    percent.line = shown.printed;
    if (counted)
        percent.daily = daily_value_or(side.label, nutrient, std::nullopt);
    steps.push_back(percent);
    if (shown.percent->range) {
        Step range = step(Kind::PercentOnBasis, daily_value_citation(nutrient, side.label.panel));
        range.percents = shown.percent->range;
        steps.push_back(range);
    }
}

void add_basis(const ReadLabel& side, Nutrient nutrient, const Ground& ground, std::vector<Step>& steps)
{
    const auto factor = factor_of(ground.basis, side.label, side.sharp.sizes, ground.amount, ground.measure);
    const Measured shown = measured(side, nutrient, ground, std::nullopt);
    if (!factor || shown.scale == Scale{})
        return;
    add_sizes(side, ground, steps);
    if (shown.shown.figure) {
        Step times = step(Kind::Times);
        times.line = shown.shown.printed;
        times.times = factor->taught;
        times.figure = shown.shown.figure;
        steps.push_back(times);
    }
    if (shown.shown.range)
        steps.push_back(ranged(Kind::OnBasis, *shown.shown.range));
    add_percent(shown.shown, side, nutrient, ground, factor->taught, steps);
}

} // namespace

std::vector<Step> sizes_steps(const ReadLabel& side)
{
    std::vector<Step> steps;
    if (side.sharp.sizes.serving)
        add_serving(side.sharp.sizes, steps);
    if (side.sharp.sizes.servings)
        add_servings(side.sharp.sizes, steps);
    return steps;
}

std::string_view rounding_citation(Nutrient nutrient, Panel panel)
{
    const RoundingRule* rule = rounding_rule(nutrient, panel);
    if (!rule)
        return "21 CFR 101.9(c)(8)(iii), (iv)";
    if (info(nutrient).rounding == Rounding::Carbohydrate && nutrient == Nutrient::Protein)
        return "21 CFR 101.9(c)(7)";
    return rule->citation;
}

std::string_view daily_value_citation(Nutrient nutrient, Panel panel)
{
    return rounding_rule(nutrient, panel) ? "21 CFR 101.9(c)(9)" : "21 CFR 101.9(c)(8)(iv)";
}

std::vector<Step> steps_of(const ReadLabel& side, Nutrient nutrient, const Ground& ground)
{
    std::vector<Step> steps;
    LineSteps(side, nutrient, ground.basis, steps).write();
    if (steps.front().kind != Kind::NotPrinted)
        add_basis(side, nutrient, ground, steps);
    return steps;
}

std::optional<Content> common_value(const Shown& left, const Shown& right)
{
    if (!left.range || !right.range || !left.range->overlaps(*right.range))
        return std::nullopt;
    return std::max(left.range->low, right.range->low);
}

} // namespace core
