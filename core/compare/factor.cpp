#include "core/compare/factor.h"

#include "core/figure/wide.h"

#include <numeric>

namespace core {
namespace {

constexpr std::int64_t one = 1'000'000'000;
using Kitchen = Household::Unit;

std::int64_t nano_of(const Measure& measure)
{
    return std::visit([](auto amount) { return amount.nano(); }, measure);
}

Factor reduced(Factor factor)
{
    const auto by_gcd = [](std::int64_t& over, std::int64_t& under) {
        if (const auto common = std::gcd(over, under); common > 1) {
            over /= common;
            under /= common;
        }
    };
    by_gcd(factor.taught.over, factor.taught.under);
    by_gcd(factor.range.low_over, factor.range.low_under);
    by_gcd(factor.range.high_over, factor.range.high_under);
    return factor;
}

Factor exactly(Ratio ratio)
{
    return {ratio, {ratio.over, ratio.under, ratio.over, ratio.under}};
}

/// So many times the package; nothing where the servings cannot be multiplied.
std::optional<Factor> of_package(const Label& label, const Sizes& sizes, Ratio times)
{
    if (!sizes.servings)
        return std::nullopt;
    return Factor{
        {label.servings.count.nano() * times.over, one * times.under},
        {sizes.servings->low * times.over, one * times.under, sizes.servings->high * times.over, one * times.under}};
}

std::optional<Factor> of_hundred(const Label& label, const Sizes& sizes)
{
    if (!sizes.serving)
        return std::nullopt;
    return Factor{{100 * one, nano_of(*label.serving.metric)},
                  {100 * one, sizes.serving->high, 100 * one, sizes.serving->low}};
}

/// How wide "about" is in halves of a step: pieces and fluid ounces go by ones, cups and teaspoons by quarters,
/// tablespoons by thirds (21 CFR 101.9(b)(5)(i); that "about" means half a step is common practice).
std::int64_t steps_in_one(Kitchen unit)
{
    if (unit == Kitchen::Cup || unit == Kitchen::Teaspoon)
        return 4;
    return unit == Kitchen::Tablespoon ? 3 : 1;
}

/// `amount` of a measure over what the serving holds of it, both in millilitres or pieces.
Factor by_measure(const Household& serving, Ratio amount, Kitchen unit)
{
    const std::int64_t wanted = unit == Kitchen::Piece ? 1 : label_millilitres(unit);
    const std::int64_t own = unit == Kitchen::Piece ? 1 : label_millilitres(serving.unit);
    const Ratio count = serving.count;
    const std::int64_t over = wanted * amount.over;
    const std::int64_t under = own * amount.under;
    Factor factor = exactly({over * count.under, under * count.over});
    if (!serving.about)
        return factor;
    const std::int64_t halves = 2 * steps_in_one(serving.unit); // count +- 1/halves
    const std::int64_t less = count.over * halves - count.under;
    const std::int64_t more = count.over * halves + count.under;
    const std::int64_t least = less > 0 ? less : 1;
    factor.range = {over * count.under * halves, under * more, over * count.under * halves, under * least};
    return factor;
}

Kitchen unit_of(MyAmount::Of of)
{
    if (of == MyAmount::Of::Cups)
        return Kitchen::Cup;
    return of == MyAmount::Of::Tablespoons ? Kitchen::Tablespoon : Kitchen::Piece;
}

std::optional<Factor> of_my_amount(const Label& label, const Sizes& sizes, const MyAmount& amount)
{
    if (!is_sound(amount))
        return std::nullopt;
    if (amount.of == MyAmount::Of::Servings)
        return exactly(amount.times);
    if (amount.of == MyAmount::Of::Package)
        return of_package(label, sizes, amount.times);
    const auto household = parse_household(label.serving.household);
    if (!household || comparable_on(Basis::MyAmount, label, label, amount) != Why::Comparable)
        return std::nullopt;
    return by_measure(*household, amount.times, unit_of(amount.of));
}

/// a x b x c, or nothing where it does not fit.
std::optional<Wide> product_of(std::int64_t a, std::int64_t b, std::int64_t c)
{
    Wide product = Wide{a} * b;
    if (__builtin_mul_overflow(product, Wide{c}, &product))
        return std::nullopt;
    return product;
}

} // namespace

std::optional<Factor> factor_of(Basis basis, const Label& label, const Sizes& sizes, const MyAmount& amount,
                                const std::optional<Household>& measure)
{
    std::optional<Factor> factor;
    switch (basis) {
    case Basis::Serving:
    case Basis::Prepared:
        return exactly({1, 1});
    case Basis::Package:
        factor = of_package(label, sizes, {1, 1});
        break;
    case Basis::SameAmount:
        factor = of_hundred(label, sizes);
        break;
    case Basis::SameMeasure:
        if (const auto household = parse_household(label.serving.household); household && measure)
            factor = by_measure(*household, {1, 1}, measure->unit);
        break;
    case Basis::MyAmount:
        factor = of_my_amount(label, sizes, amount);
        break;
    }
    if (factor)
        factor = reduced(*factor);
    return factor;
}

bool surely_less(Range<Content> left, const Scale& left_scale, Range<Content> right, const Scale& right_scale)
{
    const auto most_left = product_of(left.high.nano(), left_scale.high_over, right_scale.low_under);
    const auto least_right = product_of(right.low.nano(), right_scale.low_over, left_scale.high_under);
    return most_left && least_right && *most_left <= *least_right;
}

} // namespace core
