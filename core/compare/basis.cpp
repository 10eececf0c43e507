#include "core/compare/basis.h"

#include "core/figure/rounding.h"

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
    return Why::Comparable;
}

Why same_amount_problem(const Label& left, const Label& right)
{
    if (!left.serving.metric || !right.serving.metric)
        return Why::NoMetricServing;
    if (!same_dimension(*left.serving.metric, *right.serving.metric))
        return Why::GramsAgainstMillilitres;
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
    const Why problem = package_problem(left);
    return problem != Why::Comparable ? problem : package_problem(right);
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
