#include "ui/look/sizes.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace ui {
namespace {

constexpr float note_px = 24;
/// The largest letters that screens are made for, against those of 100 %.
constexpr float most_growth = 3;
/// Where the bar needs large letters too, and leaves less room.
constexpr float most_growth_on_small_glass = 2.5F;
/// Of figure, name and headline.
constexpr float most_growth_of_large = 2;
/// Of the bar, but for the glass that asks for more at 100 %.
constexpr float most_growth_of_bar = 1.5F;
/// The longest word of a label, in em of the bold letters ("Monounsaturated"); a test holds every word against it.
constexpr float longest_word_em = 9.2F;
/// A side's mark and the room behind it.
constexpr float mark_em = 1.2F;
/// The longest word of a title ("coordinación").
constexpr float longest_title_word_em = 7.8F;
/// Nobody has measured the glass: as close as the pixels of a 10-inch panel of 1280x800, so that a group can read.
constexpr float usual_px_per_mm = 5.9F;
/// A finger's room (ISO 9241-9 and common practice for stations: 15 mm and more).
constexpr float target_mm = 15;
/// A group reads a capital of 1/200 of its distance (common practice for signs and slides).
constexpr float group_part = 200;

/// How far letters grow at 100 %, so that a capital of the smallest is high enough in millimetres.
float grown_for_reader(const Glass& glass, float window)
{
    if (glass.px_per_mm <= 0)
        return window;
    const float em = least_capital_mm(glass.distance_mm) * glass.px_per_mm / capital_per_em;
    return std::clamp(em / note_px, window, most_growth * window);
}

float group_em(const Glass& glass, float window)
{
    const float px_per_mm = glass.px_per_mm > 0 ? glass.px_per_mm : usual_px_per_mm * window;
    return std::ceil(static_cast<float>(glass.group_distance_mm) / group_part * px_per_mm / capital_per_em);
}

} // namespace

float least_capital_mm(int distance_mm)
{
    constexpr float floor_mm = 4.8F;
    constexpr float part = 6.2F / 500; // 0.7 degrees are 6.11 mm at 500 mm
    return std::max(floor_mm, part * static_cast<float>(distance_mm));
}

Sizes sizes_for(const Glass& glass, int text_percent)
{
    // 1 at 1280x800 lying or 800x1280 upright; smaller windows keep the letters, larger ones let everything grow.
    const float longer = std::max(glass.width, glass.height) / 1280.0F;
    const float shorter = std::min(glass.width, glass.height) / 800.0F;
    const float window = std::max(1.0F, std::min(longer, shorter));
    const float letters = grown_for_reader(glass, window);
    const float most = letters > most_growth_of_bar * window ? most_growth_on_small_glass : most_growth;
    const float full = std::max(letters, std::min(letters * static_cast<float>(text_percent) / 100.0F, most * window));
    const float less = std::min(letters + (full - letters) * 0.5F, most_growth_of_large * window);
    const auto px = [](float size) { return std::round(size); };
    Sizes sizes{};
    sizes.note = px(note_px * full);
    sizes.bar =
        px(note_px * std::max(letters, std::min(letters + (full - letters) * 0.25F, most_growth_of_bar * window)));
    sizes.margin = px(32 * window);
    const float widest_em = (glass.width - 2 * sizes.margin) / longest_word_em;
    sizes.text = std::min(px(30 * full), std::floor(widest_em));
    const float title_em = std::floor((glass.width - 2 * sizes.margin) / longest_title_word_em);
    sizes.name = std::max(std::min(px(38 * less), title_em), sizes.text);
    sizes.figure = std::max(px(47 * less), sizes.text);
    sizes.headline = std::max(std::min(px(59 * less), title_em), sizes.text);
    if (glass.group_distance_mm > 0) {
        // Beside a side's mark; glass that is too narrow for the distance shows what it can.
        const float widest = std::floor((glass.width - 2 * sizes.margin) / (longest_word_em + mark_em));
        const float em = std::min(group_em(glass, window), widest);
        for (float* size : {&sizes.note, &sizes.text, &sizes.name, &sizes.figure, &sizes.headline})
            *size = std::max(*size, em);
    }
    sizes.unit = px(8 * window);
    sizes.gap = px(24 * window);
    sizes.target = px(std::max(64 * window, target_mm * glass.px_per_mm));
    sizes.corner = px(12 * window);
    sizes.line = std::max(1.0F, px(1.5F * window));
    sizes.width = glass.width;
    sizes.height = glass.height;
    return sizes;
}

Sizes sizes_for(float width, float height, int text_percent)
{
    return sizes_for({width, height}, text_percent);
}

bool same_letters(const Sizes& a, const Sizes& b)
{
    return a.note == b.note && a.bar == b.bar && a.text == b.text && a.name == b.name && a.figure == b.figure &&
           a.headline == b.headline;
}

int next_text_percent(int percent)
{
    const auto* next = std::upper_bound(std::begin(text_percents), std::end(text_percents), percent);
    return next == std::end(text_percents) ? text_percents[0] : *next;
}

} // namespace ui
