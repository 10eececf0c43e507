// Hands work from one thread to another, in order, and never more than a few pieces ahead.
#pragma once

#include <condition_variable>
#include <deque>
#include <mutex>
#include <optional>

namespace catalog {

/// A short line between one giver and one taker.
template<class Piece>
class Handover {
public:
    explicit Handover(std::size_t most_waiting) : most_(most_waiting) {}

    /// Waits for room. False when the taker has left: nothing more is needed.
    bool give(Piece piece)
    {
        std::unique_lock lock(mutex_);
        changed_.wait(lock, [&] { return waiting_.size() < most_ || taker_left_; });
        if (taker_left_)
            return false;
        waiting_.push_back(std::move(piece));
        changed_.notify_all();
        return true;
    }

    /// Waits for a piece; nothing when the giver has left and all is taken.
    std::optional<Piece> take()
    {
        std::unique_lock lock(mutex_);
        changed_.wait(lock, [&] { return !waiting_.empty() || giver_left_; });
        if (waiting_.empty())
            return std::nullopt;
        auto piece = std::move(waiting_.front());
        waiting_.pop_front();
        changed_.notify_all();
        return piece;
    }

    void giver_leaves()
    {
        const std::lock_guard lock(mutex_);
        giver_left_ = true;
        changed_.notify_all();
    }
    void taker_leaves()
    {
        const std::lock_guard lock(mutex_);
        taker_left_ = true;
        changed_.notify_all();
    }

private:
    std::size_t most_;
    std::mutex mutex_;
    std::condition_variable changed_;
    std::deque<Piece> waiting_;
    bool giver_left_ = false;
    bool taker_left_ = false;
};

} // namespace catalog
