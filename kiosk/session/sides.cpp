#include "kiosk/session/sides.h"

namespace kiosk {

std::optional<ui::Side> side_of(const Sides& sides, const core::Gtin& gtin)
{
    for (const auto side : {ui::Side::Left, ui::Side::Right})
        if (const auto& held = sides[ui::index_of(side)]; held && held->product.gtin == gtin)
            return side;
    return std::nullopt;
}

std::optional<ui::Side> side_to_take(const Sides& sides)
{
    const auto& left = sides[0];
    const auto& right = sides[1];
    if (!left)
        return ui::Side::Left;
    if (!right)
        return ui::Side::Right;
    if (left->kept && right->kept)
        return std::nullopt;
    if (left->kept)
        return ui::Side::Right;
    if (right->kept)
        return ui::Side::Left;
    return left->taken < right->taken ? ui::Side::Left : ui::Side::Right;
}

} // namespace kiosk
