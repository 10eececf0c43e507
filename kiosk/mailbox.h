// What threads hand to one another: Newest keeps the last thing put in, Every keeps all of them.
#pragma once

#include "kiosk/clock.h"

#include <condition_variable>
#include <cstddef>
#include <deque>
#include <iterator>
#include <mutex>
#include <optional>
#include <utility>
#include <vector>

namespace kiosk {

/// For things that age: a new one replaces one that nobody took. Any thread may put and take.
template<class T>
class Newest {
public:
    /// Puts a value in, over the one that waits there.
    void put(T value)
    {
        {
            const std::lock_guard lock(mutex_);
            value_ = std::move(value);
        }
        filled_.notify_one();
    }

    /// The newest value, once; nothing when none came since the last take.
    [[nodiscard]] std::optional<T> take()
    {
        const std::lock_guard lock(mutex_);
        return std::exchange(value_, std::nullopt);
    }

    /// Waits for a value, at most so long.
    [[nodiscard]] std::optional<T> take_within(Milliseconds patience)
    {
        std::unique_lock lock(mutex_);
        filled_.wait_for(lock, patience, [this] { return value_.has_value(); });
        return std::exchange(value_, std::nullopt);
    }

private:
    std::mutex mutex_;
    std::condition_variable filled_;
    std::optional<T> value_;
};

/// For things of which each counts, in the order they came. Any thread may put and take.
/// Bounded: when `capacity` values wait, a new one is refused and counted, never an older one thrown away:
/// those came first, and a taker that far behind will not do better with other ones.
template<class T>
class Every {
public:
    /// So many that a person cannot fill it: a hand scanner makes some three scans a second.
    static constexpr std::size_t default_capacity = 1024;

    explicit Every(std::size_t capacity = default_capacity) : capacity_(capacity) {}

    /// False when the box is full: the value was refused.
    [[nodiscard]] bool put(T value)
    {
        const std::lock_guard lock(mutex_);
        if (waiting_.size() >= capacity_) {
            ++refused_;
            return false;
        }
        waiting_.push_back(std::move(value));
        return true;
    }

    /// All that wait, oldest first; empty when none do. Never waits for more.
    [[nodiscard]] std::vector<T> take_all()
    {
        std::deque<T> taken;
        {
            const std::lock_guard lock(mutex_);
            taken.swap(waiting_);
        }
        return {std::move_iterator(taken.begin()), std::move_iterator(taken.end())};
    }

    /// How many were refused since the start, for the log.
    [[nodiscard]] std::size_t refused() const
    {
        const std::lock_guard lock(mutex_);
        return refused_;
    }

private:
    mutable std::mutex mutex_;
    std::deque<T> waiting_;
    std::size_t capacity_;
    std::size_t refused_ = 0;
};

} // namespace kiosk
