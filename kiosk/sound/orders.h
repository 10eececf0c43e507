// What any thread asks of the sound's thread, kept until that thread takes it.
#pragma once

#include "kiosk/clock.h"
#include "kiosk/sound/tones.h"

#include <condition_variable>
#include <mutex>
#include <optional>
#include <string>
#include <utility>

namespace kiosk {

/// Words to be spoken: plain, units written out (`ui::spoken`).
struct Utterance {
    unsigned id = 0; ///< comes back with what is reported of it
    std::string words;
    std::string voice = "en-us";
    int rate_percent = 100; ///< of 175 words a minute
};

/// All that waits; of each kind the newest.
struct SoundOrders {
    std::optional<Tone> tone;
    std::optional<std::optional<Utterance>> speech; ///< speak this; or, when it holds nothing, be quiet
    std::optional<bool> paused;
    std::optional<int> volume; ///< a step
    bool stop = false;         ///< the station ends

    [[nodiscard]] bool any() const { return tone || speech || paused || volume || stop; }
};

/// Where the orders wait. Any thread puts, one takes.
class OrderBook {
public:
    /// Writes down an order: `write(orders)` sets its kind.
    template<class Write>
    void put(const Write& write)
    {
        {
            const std::lock_guard lock(mutex_);
            write(orders_);
        }
        filled_.notify_one();
    }

    /// All that wait; waits at most so long for the first.
    [[nodiscard]] SoundOrders take_within(Milliseconds patience)
    {
        std::unique_lock lock(mutex_);
        filled_.wait_for(lock, patience, [this] { return orders_.any(); });
        return std::exchange(orders_, {});
    }

private:
    std::mutex mutex_;
    std::condition_variable filled_;
    SoundOrders orders_;
};

} // namespace kiosk
