#include "ui/look/sizes.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace ui {

Sizes sizes_for(float width, float height, int text_percent)
{
    // 1 at 1280x800 lying or 800x1280 upright; smaller windows keep the letters, larger ones let everything grow.
    const float longer = std::max(width, height) / 1280.0F;
    const float shorter = std::min(width, height) / 800.0F;
    const float window = std::max(1.0F, std::min(longer, shorter));
    const float full = window * static_cast<float>(text_percent) / 100.0F;
    const float less = window * (1.0F + static_cast<float>(text_percent - 100) / 100.0F * 0.5F);
    const auto px = [](float size) { return std::round(size); };
    Sizes sizes{};
    sizes.note = px(24 * full);
    sizes.bar = px(24 * (window + (less - window) * 0.5F));
    sizes.text = px(30 * full);
    sizes.name = std::max(px(38 * less), sizes.text);
    sizes.figure = std::max(px(47 * less), sizes.text);
    sizes.headline = px(59 * less);
    sizes.unit = px(8 * window);
    sizes.margin = px(32 * window);
    sizes.gap = px(24 * window);
    sizes.target = px(64 * window);
    sizes.corner = px(12 * window);
    sizes.line = std::max(1.0F, px(1.5F * window));
    sizes.width = width;
    sizes.height = height;
    return sizes;
}

int next_text_percent(int percent)
{
    const auto* next = std::upper_bound(std::begin(text_percents), std::end(text_percents), percent);
    return next == std::end(text_percents) ? text_percents[0] : *next;
}

} // namespace ui
