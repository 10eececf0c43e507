// When a station that nobody touches asks whether somebody is there, and when it goes back to the start.
#pragma once

#include "kiosk/clock.h"

#include <optional>

namespace kiosk {

/// Counts the time since the last touch, key or scan. Time is passed in.
class Idle {
public:
    /// People have at least 20 seconds to answer (WCAG 2.2, 2.2.1).
    static constexpr std::chrono::seconds to_answer{30};

    /// `patience`: before it asks; zero or less: it never does.
    Idle(std::chrono::seconds patience, TimePoint now) : patience_(patience), touched_(now) {}

    /// Somebody is there.
    void touched(TimePoint now)
    {
        touched_ = now;
        asked_.reset();
    }

    /// What is to be done now.
    enum class What { Nothing, Ask, Forget };
    struct Step {
        What what = What::Nothing;
        int seconds_left = 0; ///< for Ask
    };
    /// `in_use`: whether there is anything to forget. To be asked at `due`, and as often as one likes.
    [[nodiscard]] Step look(TimePoint now, bool in_use);
    /// When to look next; nothing when never.
    [[nodiscard]] std::optional<TimePoint> due() const;

private:
    std::chrono::seconds patience_;
    TimePoint touched_;
    std::optional<TimePoint> asked_; ///< when it asked
    int told_ = 0;                   ///< the seconds that were told last
};

} // namespace kiosk
