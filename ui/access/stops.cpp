#include "ui/access/stops.h"

#include <algorithm>

namespace ui {
namespace {

constexpr float rounding = 1; // places are rounded to whole pixels

bool inside(const Note& inner, const Note& outer)
{
    return inner.low.x >= outer.low.x - rounding && inner.low.y >= outer.low.y - rounding &&
           inner.high.x <= outer.high.x + rounding && inner.high.y <= outer.high.y + rounding;
}

/// Whether two places stand beside each other: the middle of one lies between top and bottom of the other.
bool in_one_line(const Stop& a, const Stop& b)
{
    const float middle_a = (a.low.y + a.high.y) / 2;
    const float middle_b = (b.low.y + b.high.y) / 2;
    return (middle_a > b.low.y && middle_a < b.high.y) || (middle_b > a.low.y && middle_b < a.high.y);
}

} // namespace

std::vector<Stop> stops_of(const Notes& notes)
{
    std::vector<std::size_t> touchable;
    for (std::size_t i = 0; i < notes.size(); ++i)
        if (notes[i].touchable)
            touchable.push_back(i);
    std::vector<Stop> stops;
    for (const std::size_t i : touchable)
        stops.push_back({i, {}, true, notes[i].low, notes[i].high});
    for (std::size_t i = 0; i < notes.size(); ++i) {
        if (notes[i].touchable)
            continue;
        const auto holder = std::ranges::find_if(
            stops, [&](const Stop& stop) { return stop.touchable && inside(notes[i], notes[stop.note]); });
        if (holder != stops.end())
            holder->with.push_back(i);
        else
            stops.push_back({i, {}, false, notes[i].low, notes[i].high});
    }
    // An area that draws its own content is noted behind it: it is met where the first of its words is.
    const auto first = [](const Stop& stop) {
        return stop.with.empty() ? stop.note : std::min(stop.note, stop.with.front());
    };
    std::ranges::stable_sort(stops, {}, first);
    return stops;
}

std::vector<std::vector<std::size_t>> lines_of_stops(const std::vector<Stop>& stops)
{
    std::vector<std::vector<std::size_t>> lines;
    for (std::size_t i = 0; i < stops.size(); ++i) {
        if (!stops[i].touchable)
            continue;
        if (lines.empty() || !in_one_line(stops[lines.back().back()], stops[i]))
            lines.emplace_back();
        lines.back().push_back(i);
    }
    return lines;
}

} // namespace ui
