#include "core/rules/reference_amounts.h"

#include <algorithm>

namespace core {

const ReferenceAmount* reference_amount(std::string_view key)
{
    const auto rows = reference_amounts();
    const auto found = std::ranges::find(rows, key, &ReferenceAmount::key);
    return found == rows.end() ? nullptr : &*found;
}

std::optional<Measure> amount_of(const ReferenceAmount& food)
{
    if (food.nano == 0)
        return std::nullopt;
    return food.volume ? Measure(Volume::from_nano(food.nano)) : Measure(Mass::from_nano(food.nano));
}

std::optional<bool> is_small(const ReferenceAmount& food)
{
    constexpr std::int64_t small = 30'000'000'000; // 30 g, and 2 tbsp of 15 mL
    if (food.nano == 0)
        return std::nullopt;
    return food.nano <= small;
}

} // namespace core
