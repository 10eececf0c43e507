#include "core/compare/basis.h"

#include "core/figure/rounding.h"

#include <algorithm>

namespace core {
namespace {

Why package_problem(const Label& label)
{
    using Kind = ServingsPerContainer::Kind;
    if (label.second && label.second->kind == SecondColumn::Kind::PerContainer)
        return Why::Comparable;
    switch (label.servings.kind) {
    case Kind::Varied:
        return Why::ServingsVaried;
    case Kind::NotPrinted:
        return Why::ServingsNotPrinted;
    case Kind::About:
        return range_behind_about(label.servings.count) ? Why::Comparable : Why::ServingsOffTheRule;
    case Kind::Number:
    case Kind::Single:
        break;
    }
    return label.servings.count > Count{} ? Why::Comparable : Why::ServingsNotPrinted;
}

std::int64_t size_of(const Measure& measure)
{
    return std::visit([](auto amount) { return amount.nano(); }, measure);
}

Why same_amount_problem(const Label& left, const Label& right)
{
    if (!left.serving.metric || !right.serving.metric)
        return Why::NoMetricServing;
    if (!same_dimension(*left.serving.metric, *right.serving.metric))
        return Why::GramsAgainstMillilitres;
    // No reader of labels lets a serving of nothing in; whoever builds one by hand must not divide by it.
    if (size_of(*left.serving.metric) <= 0 || size_of(*right.serving.metric) <= 0)
        return Why::NoMetricServing;
    return Why::Comparable;
}

} // namespace

Why comparable_on(Basis basis, const Label& left, const Label& right)
{
    if (left.audience != right.audience)
        return Why::UnlikeAudience;
    if (basis == Basis::SameAmount)
        return same_amount_problem(left, right);
    if (basis == Basis::Serving)
        return Why::Comparable;
    return std::max(package_problem(left), package_problem(right)); // whichever side it is on, the same answer
}

ServingSizes serving_sizes(const Label& left, const Label& right)
{
    if (!left.serving.metric || !right.serving.metric)
        return ServingSizes::Unknown;
    if (!same_dimension(*left.serving.metric, *right.serving.metric))
        return ServingSizes::Unlike;
    return *left.serving.metric == *right.serving.metric ? ServingSizes::Same : ServingSizes::Differ;
}

} // namespace core
