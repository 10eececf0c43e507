#include "core/compare/measured.h"

#include "core/compare/shown_figure.h"
#include "core/figure/wide.h"
#include "core/label/content_behind.h"

#include <algorithm>

namespace core {
namespace {

bool in_package_column(const Label& label, Nutrient nutrient, Basis basis)
{
    const Column* package = basis == Basis::Package ? per_container(label) : nullptr;
    return package && prints(*package, nutrient);
}

bool in_prepared_column(const Label& label, Basis basis)
{
    return basis == Basis::Prepared && label.second && label.second->kind == SecondColumn::Kind::AsPrepared;
}

Why why_of(Contradiction contradiction)
{
    switch (contradiction) {
    case Contradiction::OffTheRule:
        return Why::FigureOffTheRule;
    case Contradiction::AmountAgainstPercent:
        return Why::AmountAgainstPercent;
    case Contradiction::WorkedBack:
        return Why::FigureWorkedBack;
    case Contradiction::PartAgainstWhole:
        break;
    }
    return Why::PartAgainstWhole;
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

Measured printed(const ReadLabel& side, Nutrient nutrient, Basis basis, std::optional<Content> nominal)
{
    const Column& column = column_for(side.label, nutrient, basis);
    Measured measured;
    measured.multiplied = false;
    if (!prints(column, nutrient))
        return measured;
    auto& shown = measured.shown;
    const Line* line = column.find(nutrient);
    shown.source = line ? Source::Printed : Source::NotSignificant;
    if (line) {
        shown.printed = *line;
        shown.figure = line->amount;
    }
    shown.percent = percent_of_column(side.label, column, nutrient);
    const Backwards& back = backwards(side, nutrient, basis);
    if (back.contradiction) {
        shown.contradiction = back.contradiction;
        shown.against = back.against;
        measured.why = why_of(*back.contradiction);
        return measured;
    }
    measured.content = nominal ? content_behind(side.label, column, nutrient, nominal) : back.content;
    if (!measured.content)
        measured.why = why_nothing(side.label, line, nutrient, nominal);
    else if (!nominal)
        shown.range = measured.content;
    return measured;
}

/// Whether the basis is one serving as the label prints it, so that there is nothing to multiply.
bool is_as_printed(const Label& label, Nutrient nutrient, const Ground& ground, const Factor& factor)
{
    if (in_package_column(label, nutrient, ground.basis))
        return true;
    const bool about = ground.basis == Basis::Package && label.servings.kind == ServingsPerContainer::Kind::About;
    return factor.taught == Ratio{1, 1} && !about && factor.range.low_over == factor.range.low_under &&
           factor.range.high_over == factor.range.high_under;
}

/// A serving of 100 g is printed for this very amount, though its true weight is a range.
bool is_printed_for_amount(const Ground& ground, const Factor& factor)
{
    return ground.basis == Basis::SameAmount && factor.taught == Ratio{1, 1};
}

} // namespace

const Backwards& backwards(const ReadLabel& side, Nutrient nutrient, Basis basis)
{
    const bool second = in_package_column(side.label, nutrient, basis) || in_prepared_column(side.label, basis);
    return second && side.sharp.second ? side.sharp.second->of(nutrient) : side.sharp.serving.of(nutrient);
}

bool prints(const Column& column, Nutrient nutrient)
{
    const Line* line = column.find(nutrient);
    return line ? line->amount || line->percent : column.not_significant.contains(nutrient);
}

const Column& column_for(const Label& label, Nutrient nutrient, Basis basis)
{
    return in_package_column(label, nutrient, basis) || in_prepared_column(label, basis) ? label.second->column
                                                                                         : label.per_serving;
}

Measured measured(const ReadLabel& side, Nutrient nutrient, const Ground& ground, std::optional<Content> nominal)
{
    Measured measured = printed(side, nutrient, ground.basis, nominal);
    if (measured.shown.source == Source::NotPrinted)
        return measured;
    if (in_package_column(side.label, nutrient, ground.basis)) {
        const auto serving = percent_of_column(side.label, side.label.per_serving, nutrient);
        if (measured.shown.percent && serving)
            measured.shown.percent->label_reading = serving->reading;
        return measured;
    }
    const auto factor = factor_of(ground.basis, side.label, side.sharp.sizes, ground.amount, ground.measure);
    if (!factor) // a package whose other lines stand in a column of their own
        return Measured{{}, std::nullopt, {}, comparable_on(Basis::Package, side.label, side.label), true};
    if (is_as_printed(side.label, nutrient, ground, *factor))
        return measured;
    measured.scale = factor->range;
    measured.multiplied = !is_printed_for_amount(ground, *factor);
    scale_shown(measured.shown, {side.label, nutrient, ground.basis, nominal, measured.content}, *factor);
    return measured;
}

} // namespace core
