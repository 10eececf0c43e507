#include "core/rules/programs.h"

namespace core {

std::optional<Reason> not_for_program(RuleFood rule_food, const ReferenceAmount* food)
{
    if (!food)
        return Reason::NoReferenceAmount;
    const bool cereal = rule_food == RuleFood::DryCereal && food->kind == FoodKind::DryCereal;
    const bool yogurt = rule_food == RuleFood::Yogurt && food->kind == FoodKind::Yogurt;
    return cereal || yogurt ? std::nullopt : std::optional(Reason::OtherFood);
}

} // namespace core
