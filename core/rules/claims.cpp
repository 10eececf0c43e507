#include "core/rules/claims.h"

#include "core/figure/rounding.h"

namespace core {
namespace {

/// A main dish product weighs at least 6 oz a labeled serving: 21 CFR 101.13(m)(1)(i). Counted the lighter way (28 g).
constexpr Mass main_dish_from = Mass::whole(6 * 28);

bool may_be_main_dish(const Label& label)
{
    if (!label.serving.metric)
        return true;
    const auto* weight = std::get_if<Mass>(&*label.serving.metric);
    return !weight || range_behind_serving_size(*weight).high > main_dish_from;
}

/// A rule for every food that is no meal or main dish product.
std::optional<Reason> not_for_any_food(const Label& label, const ReferenceAmount& food)
{
    if (food.kind == FoodKind::MixedDish && may_be_main_dish(label))
        return Reason::MayBeMainDish;
    return std::nullopt;
}

std::optional<Reason> not_for_meal(const Label& label, const ReferenceAmount& food)
{
    return food.kind == FoodKind::MixedDish && may_be_main_dish(label) ? Reason::MayBeMainDish : Reason::OtherFood;
}

bool not_by_cup(const ReferenceAmount& food)
{
    return food.kind == FoodKind::MixedDish && !food.volume;
}

} // namespace

std::optional<Reason> not_for_claim(RuleFood rule_food, const Label& label, const ReferenceAmount* food)
{
    if (label.audience != Audience::Adult || (food && food->kind == FoodKind::Young))
        return Reason::ForYoungChildren;
    if (!food)
        return Reason::NoReferenceAmount;
    switch (rule_food) {
    case RuleFood::AnyFood:
        return not_for_any_food(label, *food);
    case RuleFood::MealOrMainDish:
    case RuleFood::Meal:
    case RuleFood::MainDish:
        return not_for_meal(label, *food);
    case RuleFood::Seafood:
        return food->kind == FoodKind::Seafood ? std::nullopt : std::optional(Reason::OtherFood);
    case RuleFood::MixedDishByPiece:
        return not_by_cup(*food) ? std::nullopt : std::optional(Reason::OtherFood);
    case RuleFood::DryCereal:
    case RuleFood::Yogurt:
        break;
    }
    return Reason::OtherFood;
}

} // namespace core
