#include "core/compare/basis.h"

#include "core/figure/rounding.h"
#include "core/label/sizes.h"

#include <algorithm>

namespace core {
namespace {

using Kitchen = Household::Unit;

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
        if (!range_behind_about(label.servings.count))
            return Why::ServingsOffTheRule;
        break;
    case Kind::Number:
    case Kind::Single:
        if (label.servings.count <= Count{})
            return Why::ServingsNotPrinted;
        break;
    }
    return sizes_of(label).contradict ? Why::ServingsAgainstNet : Why::Comparable;
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

bool is_volume(const Household& household)
{
    return label_millilitres(household.unit) > 0;
}

Why same_measure_problem(const Label& left, const Label& right)
{
    const auto a = parse_household(left.serving.household);
    const auto b = parse_household(right.serving.household);
    const auto measured = [](const auto& read) { return read && (is_volume(*read) || read->unit == Kitchen::Piece); };
    if (!measured(a) || !measured(b))
        return Why::NoHouseholdMeasure;
    return common_measure(left, right) ? Why::Comparable : Why::UnlikeMeasures;
}

Why my_amount_problem(const Label& label, const MyAmount& amount)
{
    if (amount.of == MyAmount::Of::Servings)
        return Why::Comparable;
    if (amount.of == MyAmount::Of::Package)
        return package_problem(label);
    const auto household = parse_household(label.serving.household);
    const bool fits =
        household && (amount.of == MyAmount::Of::Pieces ? household->unit == Kitchen::Piece : is_volume(*household));
    return fits ? Why::Comparable : Why::NoHouseholdMeasure;
}

bool is_prepared(const Label& label)
{
    return label.second && label.second->kind == SecondColumn::Kind::AsPrepared;
}

} // namespace

bool is_sound(const MyAmount& amount)
{
    constexpr std::int64_t most = 100;
    const auto [over, under] = amount.times;
    return over > 0 && under > 0 && under <= 8 && over <= most * under;
}

Why comparable_on(Basis basis, const Label& left, const Label& right, const MyAmount& amount)
{
    if (left.audience != right.audience)
        return Why::UnlikeAudience;
    switch (basis) {
    case Basis::Serving:
        return Why::Comparable;
    case Basis::Package: // whichever side it is on, the same answer
        return std::max(package_problem(left), package_problem(right));
    case Basis::SameAmount:
        return same_amount_problem(left, right);
    case Basis::SameMeasure:
        return same_measure_problem(left, right);
    case Basis::MyAmount:
        return std::max(my_amount_problem(left, amount), my_amount_problem(right, amount));
    case Basis::Prepared:
        break;
    }
    return is_prepared(left) && is_prepared(right) ? Why::Comparable : Why::NotPrepared;
}

std::vector<Basis> possible_bases(const Label& left, const Label& right)
{
    std::vector<Basis> possible;
    for (const Basis basis : all_bases)
        if (comparable_on(basis, left, right) == Why::Comparable)
            possible.push_back(basis);
    return possible;
}

std::optional<Household> common_measure(const Label& left, const Label& right)
{
    const auto a = parse_household(left.serving.household);
    const auto b = parse_household(right.serving.household);
    if (!a || !b || a->noun != b->noun)
        return std::nullopt;
    Household one{a->unit, {1, 1}, false, a->noun};
    if (a->unit == Kitchen::Piece && b->unit == Kitchen::Piece)
        return one;
    if (!is_volume(*a) || !is_volume(*b))
        return std::nullopt;
    const auto kitchen = [](Kitchen unit) { return unit == Kitchen::FluidOunce ? Kitchen::Cup : unit; };
    const Kitchen first = kitchen(a->unit);
    const Kitchen second = kitchen(b->unit);
    one.unit = first == second ? first : Kitchen::Tablespoon;
    return one;
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
