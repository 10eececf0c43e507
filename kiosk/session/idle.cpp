#include "kiosk/session/idle.h"

namespace kiosk {

namespace {

/// The seconds on the screen change so often: a count that changes each second is noise for a reader.
constexpr std::chrono::seconds step{5};

} // namespace

Idle::Step Idle::look(TimePoint now, bool in_use)
{
    using std::chrono::seconds;
    if (patience_ <= seconds{0})
        return {};
    if (!in_use) {
        touched(now);
        return {};
    }
    if (!asked_) {
        if (now - touched_ < patience_)
            return {};
        asked_ = now;
        told_ = static_cast<int>(to_answer.count());
        return {What::Ask, told_};
    }
    if (now - *asked_ >= to_answer) {
        touched(now);
        return {What::Forget, 0};
    }
    const auto left = std::chrono::ceil<seconds>(*asked_ + to_answer - now).count();
    const int told = static_cast<int>((left + step.count() - 1) / step.count() * step.count());
    if (told == told_)
        return {};
    told_ = told;
    return {What::Ask, told};
}

std::optional<TimePoint> Idle::due() const
{
    if (patience_ <= std::chrono::seconds{0})
        return std::nullopt;
    if (!asked_)
        return touched_ + patience_;
    return *asked_ + to_answer - std::chrono::seconds{told_} + step;
}

} // namespace kiosk
