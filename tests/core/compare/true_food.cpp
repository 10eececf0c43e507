#include "tests/core/compare/true_food.h"

#include "tests/core/compare/line_rules.h"

#include <algorithm>
#include <initializer_list>

namespace test {
namespace {

using brute::one;
using brute::Wide;
using core::Basis;
using N = core::Nutrient;
using Kitchen = core::Household::Unit;

std::int64_t& at(Contents& contents, N nutrient)
{
    return contents[static_cast<std::size_t>(nutrient)];
}

/// Takes each part from what is left of the whole.
void share_out(Contents& contents, std::int64_t whole, std::initializer_list<N> parts)
{
    for (const N part : parts) {
        auto& amount = at(contents, part);
        amount = std::min(amount, whole);
        whole -= amount;
    }
}

std::int64_t random_amount(N nutrient, Dice& dice)
{
    const auto& rule = line_rule(nutrient, core::Panel::Of2016);
    if (dice.one_in(8))
        return dice.between(0, 8) * rule.grid; // where labels print 0, and "less than"
    const std::int64_t amount = dice.between(0, rule.most / rule.grid) * rule.grid;
    switch (dice.between(0, 3)) {
    case 0:
        return amount + dice.between(0, rule.grid);
    case 1: { // where the percent changes: at halves of a percent
        const std::int64_t value = hidden_daily_value(nutrient, core::Panel::Of2016, core::Audience::Adult);
        return value > 0 ? amount * 200 / value * value / 200 : amount;
    }
    default:
        return amount;
    }
}

Contents random_contents(Dice& dice)
{
    Contents contents{};
    for (const N nutrient : tested_nutrients())
        at(contents, nutrient) = random_amount(nutrient, dice);
    // Parts come near their wholes often enough to sharpen them.
    if (dice.one_in(2))
        at(contents, N::TotalFat) = dice.between(0, 48) * one / 8;
    if (dice.one_in(2))
        at(contents, N::TotalCarbohydrate) = dice.between(0, 80) * one / 4;
    make_consistent(contents);
    return contents;
}

Kitchen random_unit(Dice& dice)
{
    constexpr Kitchen units[] = {Kitchen::Cup,   Kitchen::Tablespoon, Kitchen::Teaspoon, Kitchen::FluidOunce,
                                 Kitchen::Piece, Kitchen::Cup,        Kitchen::Piece,    Kitchen::Package};
    return units[dice.between(0, 7)];
}

core::Ratio random_count(Kitchen unit, Dice& dice)
{
    if (unit == Kitchen::Package)
        return {1, dice.between(1, 4)};
    if (unit == Kitchen::Piece) // 11.7 chips is "about 12 chips"
        return dice.one_in(2) ? core::Ratio{dice.between(1, 20), 1} : core::Ratio{dice.between(10, 200), 10};
    constexpr core::Ratio counts[] = {{1, 4}, {1, 3}, {1, 2}, {2, 3}, {3, 4}, {1, 1}, {3, 2}, {2, 1}};
    return counts[dice.between(0, 7)];
}

/// One side of the crosswise comparison: what the content is multiplied by, and what the other side is.
struct Cross {
    Wide own = 1;
    Wide others = 1;
};

Cross cross_of(const TrueFood& food, Basis basis, const core::MyAmount& amount)
{
    if (basis == Basis::Package || (basis == Basis::MyAmount && amount.of == core::MyAmount::Of::Package))
        return {food.servings, 1};
    if (basis == Basis::SameAmount)
        return {1, food.size};
    const bool own_servings = basis == Basis::MyAmount && amount.of == core::MyAmount::Of::Servings;
    if (basis == Basis::SameMeasure || (basis == Basis::MyAmount && !own_servings)) {
        const std::int64_t in_millilitres = std::max<std::int64_t>(core::label_millilitres(food.unit), 1);
        return {food.count.under, Wide{food.count.over} * in_millilitres};
    }
    return {};
}

} // namespace

Contents TrueFood::package() const
{
    Contents all = serving;
    for (auto& amount : all)
        amount = static_cast<std::int64_t>(Wide{amount} * servings / one);
    return all;
}

void make_consistent(Contents& contents)
{
    share_out(contents, at(contents, N::TotalFat),
              {N::SaturatedFat, N::TransFat, N::PolyunsaturatedFat, N::MonounsaturatedFat});
    share_out(contents, at(contents, N::TotalCarbohydrate), {N::DietaryFiber, N::TotalSugars, N::SugarAlcohol});
    share_out(contents, at(contents, N::DietaryFiber), {N::SolubleFiber, N::InsolubleFiber});
    share_out(contents, at(contents, N::TotalSugars), {N::AddedSugars});
}

TrueFood random_food(Dice& dice)
{
    TrueFood food;
    food.serving = random_contents(dice);
    food.prepared = food.serving;
    for (const N nutrient : tested_nutrients())
        if (dice.one_in(3))
            at(food.prepared, nutrient) += dice.between(0, 8) * line_rule(nutrient, core::Panel::Of2016).grid;
    make_consistent(food.prepared);
    food.size = dice.one_in(2) ? dice.between(10, 600) * one / 10 : dice.between(one, 60 * one);
    food.servings = dice.one_in(2)   ? dice.between(1, 20) * one
                    : dice.one_in(2) ? dice.between(4, 80) * one / 4
                                     : dice.between(one, 20 * one);
    food.unit = random_unit(dice);
    food.count = random_count(food.unit, dice);
    return food;
}

TrueFood neighbour(const TrueFood& food, Dice& dice)
{
    TrueFood near = food;
    for (const N nutrient : tested_nutrients())
        for (Contents* contents : {&near.serving, &near.prepared}) {
            auto& amount = at(*contents, nutrient);
            amount += dice.between(-3, 3) * line_rule(nutrient, core::Panel::Of2016).grid;
            amount = std::max<std::int64_t>(amount, 0);
        }
    make_consistent(near.serving);
    make_consistent(near.prepared);
    near.size = std::max(one, near.size + dice.between(-2, 2) * one / 2);
    near.servings = std::max(one, near.servings + dice.between(-2, 2) * one / 2);
    if (dice.one_in(2) && near.unit != Kitchen::Package)
        near.count.over += dice.between(0, 2);
    return near;
}

int order(const TrueFood& left, const TrueFood& right, N nutrient, Basis basis, const core::MyAmount& amount)
{
    const auto content = [&](const TrueFood& food) {
        return (basis == Basis::Prepared ? food.prepared : food.serving)[static_cast<std::size_t>(nutrient)];
    };
    const Cross a = cross_of(left, basis, amount);
    const Cross b = cross_of(right, basis, amount);
    const Wide of_left = Wide{content(left)} * a.own * b.others;
    const Wide of_right = Wide{content(right)} * b.own * a.others;
    return of_left < of_right ? -1 : of_left > of_right ? 1 : 0;
}

} // namespace test
