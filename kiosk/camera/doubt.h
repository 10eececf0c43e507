// When the camera's pictures of a package that none of them is sure of become a question.
#pragma once

#include "kiosk/clock.h"

#include <optional>

namespace kiosk {

/// Times of a question; common practice. A package that is just being brought into the picture is not asked about.
struct DoubtLimits {
    Milliseconds patience{1500}; ///< so long the pictures must have been unsure, without a break
    Milliseconds again{500};     ///< and so much later what they leave is looked at again
};

/// Tells when to ask, picture by picture. Time is passed in.
class Doubt {
public:
    explicit Doubt(DoubtLimits limits = {}) : limits_(limits) {}

    /// Takes whether the last pictures, up to this one, show bars of which none is sure. Returns whether to ask now.
    [[nodiscard]] bool sees(bool unsure, TimePoint now)
    {
        if (!unsure) {
            since_.reset();
            return false;
        }
        if (!since_)
            since_ = now;
        if (now - *since_ < limits_.patience || now - asked_ < limits_.again)
            return false;
        asked_ = now;
        return true;
    }

private:
    DoubtLimits limits_;
    std::optional<TimePoint> since_;
    TimePoint asked_{};
};

} // namespace kiosk
