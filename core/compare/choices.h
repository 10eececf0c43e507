// What the leader chose about the order and the aims of a comparison. A plain value: where it is kept is not told here.
#pragma once

#include "core/label/aims.h"
#include "core/label/nutrient.h"

#include <algorithm>
#include <cstddef>
#include <vector>

namespace core {

/// No more nutrients than these may come first.
inline constexpr std::size_t most_first = 4;

/// The leader's choices. Without any, the class list and the order of the panel.
struct Choices {
    AimList aims = AimList::Class;
    std::vector<Nutrient> first; ///< shown before all but calories, in this order; that gives them no aim
    bool operator==(const Choices&) const = default;
};

/// Whether the leader wants this nutrient first. Calories are first by themselves.
[[nodiscard]] inline bool comes_first(Nutrient nutrient, const Choices& choices)
{
    const auto end = choices.first.begin() + static_cast<std::ptrdiff_t>(std::min(choices.first.size(), most_first));
    return nutrient != Nutrient::Calories && std::find(choices.first.begin(), end, nutrient) != end;
}

} // namespace core
