#include "core/compare/comparison.h"
#include "core/compare/measured.h"
#include "core/label/content_behind.h"

#include <algorithm>

namespace core {
namespace {

bool prints(const Label& label, Nutrient nutrient, Basis basis)
{
    if (basis == Basis::Prepared && label.second && label.second->kind == SecondColumn::Kind::AsPrepared)
        return prints(label.second->column, nutrient);
    return prints(label.per_serving, nutrient) || prints(column_for(label, nutrient, basis), nutrient);
}

/// The same thing is printed on both and nothing was multiplied: less and more are then not to be told, nor needed. The
/// same percent is the same thing only where both count from one Daily Value.
bool same_figure(const Measured& left, const Measured& right, bool unlike_panels)
{
    const auto& a = left.shown;
    const auto& b = right.shown;
    if (left.multiplied || right.multiplied || a.source != Source::Printed || b.source != Source::Printed)
        return false;
    if (a.figure && b.figure)
        return a.figure->amount == b.figure->amount && a.figure->less_than == b.figure->less_than;
    return !unlike_panels && !a.figure && !b.figure && a.percent && b.percent &&
           a.percent->percent == b.percent->percent && a.percent->less_than == b.percent->less_than;
}

void decide(Row& row, const Measured& left, const Measured& right, bool unlike_panels)
{
    row.finding = Finding::NotComparable;
    if (left.shown.source == Source::NotPrinted || right.shown.source == Source::NotPrinted)
        row.finding = Finding::NotPrinted;
    else if (left.shown.contradiction || right.shown.contradiction) // only what stands is compared
        row.why = std::max(left.why, right.why);
    else if (same_figure(left, right, unlike_panels))
        row.finding = Finding::SameFigure;
    else if (!left.content || !right.content) {
        row.why = std::max(left.why, right.why);
        if (row.why == Why::Comparable) // a protein that is a percent only
            row.finding = Finding::NotPrinted;
    } else if (surely_less(*left.content, left.scale, *right.content, right.scale))
        row.finding = Finding::LeftLess;
    else if (surely_less(*right.content, right.scale, *left.content, left.scale))
        row.finding = Finding::LeftMore;
    else
        row.finding = Finding::TooCloseToTell;
}

Row row_of(const ReadLabel& left, const ReadLabel& right, Nutrient nutrient, const Comparison& all,
           const Choices& choices)
{
    const auto nominal = nominal_value(left.label, right.label, nutrient);
    const bool shown_alone = all.why != Why::Comparable; // each side then stands for itself, per serving
    const Ground ground{shown_alone ? Basis::Serving : all.basis, all.amount, all.measure};
    const Measured a = measured(left, nutrient, ground, nominal);
    const Measured b = measured(right, nutrient, ground, nominal);
    Row row{nutrient, aim_of(nutrient, choices.aims), a.shown, b.shown, Finding::NotComparable, all.why};
    row.first = comes_first(nutrient, choices);
    if (!shown_alone)
        decide(row, a, b, left.label.panel != right.label.panel);
    return row;
}

bool in_millilitres(const Label& label)
{
    return label.serving.metric && std::holds_alternative<Volume>(*label.serving.metric);
}

/// Where a row goes: calories, what the leader wants first (at most `most_first`), then by aim.
std::ptrdiff_t rank(const Row& row, const Choices& choices)
{
    if (row.nutrient == Nutrient::Calories)
        return 0;
    constexpr auto after_first = static_cast<std::ptrdiff_t>(most_first);
    if (row.first)
        return 1 + (std::ranges::find(choices.first, row.nutrient) - choices.first.begin());
    switch (row.aim) {
    case Aim::Less:
        return 1 + after_first;
    case Aim::More:
        return 2 + after_first;
    case Aim::Neither:
        break;
    }
    return 3 + after_first;
}

} // namespace

Comparison compare(const Label& left, const Label& right, Basis basis, const Choices& choices, const MyAmount& amount)
{
    const SharpLabel sharp_left = sharpen(left);
    const SharpLabel sharp_right = sharpen(right);
    Comparison comparison;
    comparison.basis = basis;
    if (basis == Basis::MyAmount)
        comparison.amount = amount;
    if (basis == Basis::SameMeasure)
        comparison.measure = common_measure(left, right);
    comparison.why = comparable_on(basis, left, right, amount);
    comparison.sizes = serving_sizes(left, right);
    comparison.unlike_panels = left.panel != right.panel;
    comparison.in_millilitres = in_millilitres(left) && in_millilitres(right);
    comparison.left_inconsistent = sharp_left.inconsistent();
    comparison.right_inconsistent = sharp_right.inconsistent();
    const auto times = [&](const Label& label, const SharpLabel& sharp) {
        const auto factor = comparison.why == Why::Comparable
                                ? factor_of(basis, label, sharp.sizes, amount, comparison.measure)
                                : std::nullopt;
        return factor ? std::optional(factor->taught) : std::nullopt;
    };
    comparison.left_times = times(left, sharp_left);
    comparison.right_times = times(right, sharp_right);
    const Basis shown = comparison.why == Why::Comparable ? basis : Basis::Serving;
    comparison.rows.reserve(nutrients().size());
    for (const auto& known : nutrients())
        if (prints(left, known.nutrient, shown) || prints(right, known.nutrient, shown))
            comparison.rows.push_back(
                row_of({left, sharp_left}, {right, sharp_right}, known.nutrient, comparison, choices));
    std::stable_sort(comparison.rows.begin(), comparison.rows.end(),
                     [&](const Row& a, const Row& b) { return rank(a, choices) < rank(b, choices); });
    return comparison;
}

} // namespace core
