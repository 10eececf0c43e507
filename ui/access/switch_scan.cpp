#include "ui/access/switch_scan.h"

namespace ui {
namespace {

/// Who entered a line by mistake gets out of it by waiting.
constexpr int rounds_in_a_line = 2;

using Lines = std::vector<std::vector<std::size_t>>;

Lines lines_in(std::span<const Stop> stops)
{
    return lines_of_stops({stops.begin(), stops.end()});
}

} // namespace

void SwitchScan::start(Time now)
{
    on_ = true;
    new_screen(now);
}

void SwitchScan::new_screen(Time now)
{
    line_ = 0;
    thing_.reset();
    rounds_ = 0;
    due_ = now + 2 * pace_;
}

bool SwitchScan::tick(std::span<const Stop> stops, Time now)
{
    if (!on_ || now < due_)
        return false;
    due_ = now + pace_;
    const Lines lines = lines_in(stops);
    if (lines.empty())
        return false;
    if (!thing_) {
        line_ = (line_ + 1) % lines.size();
        return true;
    }
    const auto& line = lines[line_ % lines.size()];
    if (++*thing_ >= line.size()) {
        thing_ = 0;
        if (++rounds_ >= rounds_in_a_line)
            thing_.reset();
    }
    return true;
}

std::optional<std::size_t> SwitchScan::choose(std::span<const Stop> stops, Time now)
{
    const Lines lines = lines_in(stops);
    if (!on_ || lines.empty())
        return std::nullopt;
    due_ = now + pace_;
    const auto& line = lines[line_ % lines.size()];
    if (!thing_ && line.size() > 1) {
        thing_ = 0;
        rounds_ = 0;
        return std::nullopt;
    }
    const std::size_t chosen = line[thing_.value_or(0) % line.size()];
    thing_.reset(); // the same line is lit again: many things are pressed more than once
    due_ = now + 2 * pace_;
    return chosen;
}

std::vector<std::size_t> SwitchScan::lit(std::span<const Stop> stops) const
{
    const Lines lines = lines_in(stops);
    if (!on_ || lines.empty())
        return {};
    const auto& line = lines[line_ % lines.size()];
    if (thing_)
        return {line[*thing_ % line.size()]};
    return line;
}

} // namespace ui
