// One piece of work at a time on a thread of its own, so that the screen never waits for a disk.
#pragma once

#include "catalog/load/release_options.h"
#include "kiosk/clock.h"
#include "kiosk/mailbox.h"

#include <atomic>
#include <cstdint>
#include <functional>
#include <mutex>
#include <optional>
#include <thread>
#include <utility>

namespace kiosk {

/// How far a piece of work is.
struct WorkProgress {
    std::optional<catalog::LoadProgress::Stage> stage; ///< of a load of a release
    std::uint64_t done = 0;
    std::uint64_t whole = 0; ///< 0: not known
};

/// What work is handed: to tell how far it is, and to be told to end. Its functions may be called from any thread.
class WorkLine {
public:
    explicit WorkLine(std::function<void()> wake) : wake_(std::move(wake)) {}

    /// False when the work is to end.
    [[nodiscard]] bool goes_on() const { return !ended_; }
    /// Tells how far it is; the screen is woken now and then, not each time. Returns goes_on().
    bool tell(const WorkProgress& progress)
    {
        constexpr Milliseconds between{200};
        {
            const std::lock_guard lock(mutex_);
            progress_ = progress;
            const auto now = Clock::now();
            if (now - woken_ < between)
                return goes_on();
            woken_ = now;
        }
        wake();
        return goes_on();
    }
    void end() { ended_ = true; }
    void wake() const
    {
        if (wake_)
            wake_();
    }
    [[nodiscard]] WorkProgress progress() const
    {
        const std::lock_guard lock(mutex_);
        return progress_;
    }

private:
    std::function<void()> wake_;
    std::atomic<bool> ended_ = false;
    mutable std::mutex mutex_;
    WorkProgress progress_;
    TimePoint woken_{};
};

/// Does work that ends in a Result. For one thread; only the work itself runs on another. Work must not throw.
template<class Result>
class Worker {
public:
    /// `wake` is called from the work's thread when there is news; it may be empty.
    explicit Worker(std::function<void()> wake) : wake_(std::move(wake)) {}
    Worker(const Worker&) = delete;
    Worker& operator=(const Worker&) = delete;
    /// Ends the work and waits until it has.
    ~Worker()
    {
        end();
        if (thread_.joinable())
            thread_.join();
    }

    [[nodiscard]] bool busy() const { return line_.has_value(); }

    /// Begins, when nothing else is being done; false when something is.
    bool start(std::function<Result(WorkLine&)> work)
    {
        if (busy())
            return false;
        line_.emplace(wake_);
        thread_ = std::thread([this, work = std::move(work)] {
            done_.put(work(*line_));
            line_->wake();
        });
        return true;
    }

    /// Asks the work to end; what it then brings still comes.
    void end()
    {
        if (line_)
            line_->end();
    }

    /// How far the work is.
    [[nodiscard]] WorkProgress progress() const { return line_ ? line_->progress() : WorkProgress{}; }

    /// What the work brought, once; nothing while it is being done.
    [[nodiscard]] std::optional<Result> take()
    {
        auto result = done_.take();
        if (!result)
            return std::nullopt;
        thread_.join();
        line_.reset();
        return result;
    }

private:
    std::function<void()> wake_;
    std::optional<WorkLine> line_;
    Newest<Result> done_;
    std::thread thread_;
};

} // namespace kiosk
