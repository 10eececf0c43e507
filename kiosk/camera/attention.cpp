#include "kiosk/camera/attention.h"

#include <algorithm>

namespace kiosk {

bool Attention::wants(const Thumb& thumb, TimePoint now)
{
    moving_ = !last_ || cells_changed(*last_, thumb) >= limits_.moved_cells;
    const bool other = moving_ || !last_read_ || cells_changed(*last_read_, thumb) >= limits_.moved_cells;
    last_ = thumb;
    if (other) {
        awake_until_ = now + limits_.awake;
        known_.clear();
    }
    if (!awake(now) && known_.empty())
        empty_ = thumb;
    if (!awake(now) && now - read_at_ < limits_.full_look)
        return false;
    last_read_ = thumb;
    read_at_ = now;
    return true;
}

bool Attention::something_there() const
{
    return empty_ && last_ && cells_changed(*empty_, *last_) >= limits_.moved_cells;
}

void Attention::has_read(const std::optional<std::string>& digits, TimePoint now)
{
    // More kinds of misread digits than this are no reason to go on looking at a picture that stands still.
    constexpr std::size_t most_known = 8;
    if (!digits || known_.size() >= most_known || std::ranges::count(known_, *digits) > 0)
        return;
    known_.push_back(*digits);
    awake_until_ = std::max(awake_until_, now + limits_.awake);
}

} // namespace kiosk
