#include "core/compare/comparison.h"
#include "core/compare/content_behind.h"
#include "core/compare/measured.h"

#include <algorithm>

namespace core {
namespace {

bool prints(const Label& label, Nutrient nutrient, Basis basis)
{
    if (prints(label.per_serving, nutrient))
        return true;
    const Column* column = basis == Basis::Package ? per_container(label) : nullptr;
    return column && prints(*column, nutrient);
}

Measured measured(const Label& label, const Label& other, Nutrient nutrient, Basis basis,
                  std::optional<Content> nominal)
{
    switch (basis) {
    case Basis::Package:
        return measured_package(label, nutrient, nominal);
    case Basis::SameAmount:
        return measured_hundred(label, nutrient, *other.serving.metric, nominal);
    case Basis::Serving:
        break;
    }
    return measured_serving(label, nutrient, nominal);
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
    else if (same_figure(left, right, unlike_panels))
        row.finding = Finding::SameFigure;
    else if (!left.range || !right.range) {
        row.why = std::max(left.why, right.why);
        if (row.why == Why::Comparable) // a protein that is a percent only
            row.finding = Finding::NotPrinted;
    } else if (surely_less(*left.range, *right.range))
        row.finding = Finding::LeftLess;
    else if (surely_less(*right.range, *left.range))
        row.finding = Finding::LeftMore;
    else
        row.finding = Finding::TooCloseToTell;
}

Row row_of(const Label& left, const Label& right, Nutrient nutrient, Basis basis, Why why, const Choices& choices)
{
    const auto nominal = nominal_value(left, right, nutrient);
    const bool shown_alone = why != Why::Comparable; // each side then stands for itself, per serving
    const Basis shown_basis = shown_alone ? Basis::Serving : basis;
    const Measured a = measured(left, right, nutrient, shown_basis, nominal);
    const Measured b = measured(right, left, nutrient, shown_basis, nominal);
    Row row{nutrient, aim_of(nutrient, choices.aims), a.shown, b.shown, Finding::NotComparable, why};
    row.first = comes_first(nutrient, choices);
    if (!shown_alone)
        decide(row, a, b, left.panel != right.panel);
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

Comparison compare(const Label& left, const Label& right, Basis basis, const Choices& choices)
{
    Comparison comparison;
    comparison.basis = basis;
    comparison.why = comparable_on(basis, left, right);
    comparison.sizes = serving_sizes(left, right);
    comparison.unlike_panels = left.panel != right.panel;
    comparison.in_millilitres = in_millilitres(left) && in_millilitres(right);
    comparison.rows.reserve(nutrients().size());
    for (const auto& known : nutrients())
        if (prints(left, known.nutrient, basis) || prints(right, known.nutrient, basis))
            comparison.rows.push_back(row_of(left, right, known.nutrient, basis, comparison.why, choices));
    std::stable_sort(comparison.rows.begin(), comparison.rows.end(),
                     [&](const Row& a, const Row& b) { return rank(a, choices) < rank(b, choices); });
    return comparison;
}

} // namespace core
