// Going through a screen with one switch: lines light up in turn; the switch enters a line, then chooses in it.
#pragma once

#include "ui/access/stops.h"

#include <chrono>
#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace ui {

/// How one switch goes through what can be touched. Time is passed in: any clock that only runs forward.
class SwitchScan {
public:
    using Time = std::chrono::milliseconds;

    /// How long each line or thing stays lit.
    explicit SwitchScan(Time pace = Time{1500}) : pace_(pace) {}
    void set_pace(Time pace) { pace_ = pace; }

    [[nodiscard]] bool on() const { return on_; }
    /// Begins with the first line.
    void start(Time now);
    void stop() { on_ = false; }

    /// Goes on when the time has come. True when another place is lit now.
    bool tick(std::span<const Stop> stops, Time now);
    /// When to tick next.
    [[nodiscard]] Time due() const { return due_; }

    /// The switch: enters a line of several things and returns nothing, or returns the place that is chosen.
    [[nodiscard]] std::optional<std::size_t> choose(std::span<const Stop> stops, Time now);
    /// The places that are lit: a whole line, or one thing of it.
    [[nodiscard]] std::vector<std::size_t> lit(std::span<const Stop> stops) const;
    /// Another screen is shown: begins with its first line. The first is lit longer: people look around first.
    void new_screen(Time now);

private:
    Time pace_;
    Time due_{0};
    std::size_t line_ = 0;
    std::optional<std::size_t> thing_; ///< in the line; nothing while lines are lit
    int rounds_ = 0;                   ///< through the things of a line without a choice
    bool on_ = false;
};

} // namespace ui
